package org.tugtest.rule.load;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.FedWay;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;

/** A load or coil sees more volts than it stands. */
public final class VoltsOverMost implements Rule {
  private static final String TIMES = "times";
  private static final String TIMES_LEAST = "timesLeast";
  private static final String TIMES_PULL_IN = "timesPullIn";

  /** Supplies of vehicles, and the share of one at which what is made for it still works. */
  private static final double[] SUPPLIES = {12, 24, 36, 48};

  private static final double STILL_WORKS = 0.9;
  private static final String NO_FIGURE =
      "it gives no maxV, atVolts or minV, and the sources are of several voltages";
  private static final RuleInfo INFO =
      RuleInfo.of("volts-over-most", Heading.LOAD, Level.ERROR)
          .summary("a load or coil sees more volts than it stands")
          .subjects("loads and coils that see volts in some state")
          .looksFor(
              """
              Volts at a load or coil over its maxV, in any state, whether it wants the load or not.
              Where no maxV is given, a warning: a load over 1.6 times its atVolts, else over four
              times its minV; a coil over 3.2 times its pullInV; and one that gives none of these
              over 1.6 times nominal. Where the harness has sources of other volts than nominal, as
              behind a converter, a load with minV is held to 1.6 times the least supply of 12, 24,
              36 and 48 V whose 90 % reach its minV, and one without any figure is not judged.
              """)
          .why(
              """
              A lamp for 12 V on 24 V is dark after minutes, a relay coil burns out, and a control
              unit for 12 V on the 48 V side of a converter dies at once, often with all that hangs
              on its signals.
              """)
          .remedy(
              """
              Feed it from the supply that it is made for. What stands more says so with maxV.
              """)
          .basis(
              """
              The load's own maxV. No table gives the other bounds: 1.6 times its volts, four times
              the volts it stops at and 3.2 times those a coil pulls at are chosen between what
              charging gives and the next higher supply. They can warn only.
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .setting(new Setting(TIMES, 1.6, 1, 10, "", "over atVolts, or over nominal (chosen)"))
          .setting(
              new Setting(
                  TIMES_LEAST, 4, 1, 100, "", "over minV, where no atVolts is given (chosen)"))
          .setting(new Setting(TIMES_PULL_IN, 3.2, 1, 100, "", "over pullInV, for coils (chosen)"))
          .failing(example(24))
          .passing(example(16))
          .build();

  private static String example(int volts) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": %d}}},
           "LED": {"elements": {"it": {"kind": "load", "a": "1", "b": "2", "watts": 5, "maxV": 18}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "LED:1", "areaMm2": 1, "cutMm": 500},
                   "W2": {"from": "LED:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 500}}}
        """,
        volts);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /**
   * What a load stands.
   *
   * @param why what it is told from, for the sentence; empty for its own maxV
   */
  private record Most(double volts, String why, Basis basis) {}

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    boolean several = hasSeveralVoltages(facts, settings);
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement user && isUser(user.element())) {
        judge(facts, settings, user, several, ledger);
      }
    }
  }

  private static boolean isUser(Element element) {
    return element instanceof Element.Load || element instanceof Element.Coil;
  }

  private static void judge(
      Facts facts, Settings settings, Edge.OfElement user, boolean several, Ledger ledger) {
    OperatingPoint worst = null;
    for (OperatingPoint state : facts.operating().all()) {
      double volts = Math.abs(state.across(user));
      if (volts > 0 && (worst == null || volts > Math.abs(worst.across(user)))) {
        worst = state;
      }
    }
    if (worst == null) {
      return;
    }
    Most most = most(facts, settings, user, several);
    double volts = Math.abs(worst.across(user));
    if (volts > most.volts()) {
      ledger.finding(finding(facts, user, worst, volts, most));
    } else if (several && most.why().endsWith("nominal")) {
      ledger.notJudged(user.subject(), NO_FIGURE);
    } else {
      ledger.fine();
    }
  }

  private static Most most(Facts facts, Settings settings, Edge.OfElement user, boolean several) {
    Double given = null;
    Double at = null;
    Double least = null;
    String word = "minV";
    String setting = TIMES_LEAST;
    if (user.element() instanceof Element.Load load) {
      given = load.maxV();
      at = load.atVolts();
      least = load.minV();
    } else if (user.element() instanceof Element.Coil coil) {
      given = coil.maxV();
      least = coil.pullInV();
      word = "pullInV";
      setting = TIMES_PULL_IN;
    }
    if (given != null) {
      return new Most(given, "", Basis.GIVEN);
    }
    double times = settings.number(TIMES, user.subject());
    if (at != null) {
      return practice(times, at, "its atVolts");
    }
    if (several && least != null && user.element() instanceof Element.Load) {
      for (double supply : SUPPLIES) {
        if (least <= STILL_WORKS * supply) {
          return practice(times, supply, "the supply that its minV fits");
        }
      }
    }
    if (least != null && least > 0) {
      return practice(settings.number(setting, user.subject()), least, "its " + word);
    }
    return practice(times, facts.harness().defaults().nominalV(), "nominal");
  }

  private static Most practice(double times, double volts, String of) {
    String shown = Quoted.number(times);
    return new Most(Math.round(times * volts * 1e6) / 1e6, shown + " times " + of, Basis.MEMORY);
  }

  /** Whether a source gives volts that are not near nominal. */
  private static boolean hasSeveralVoltages(Facts facts, Settings settings) {
    double nominal = facts.harness().defaults().nominalV();
    double times = settings.number(TIMES);
    return facts.network().sources().stream()
        .map(source -> volts(source.element()))
        .flatMap(Optional::stream)
        .anyMatch(volts -> volts > times * nominal || volts < nominal / times);
  }

  private static Optional<Double> volts(Element source) {
    @Nullable Double volts = source instanceof Element.Source its ? its.volts() : null;
    return Optional.ofNullable(volts);
  }

  private static Finding.Draft finding(
      Facts facts, Edge.OfElement user, OperatingPoint worst, double volts, Most most) {
    Measured measured = Measured.over(volts, most.volts(), "V");
    Finding.Draft draft =
        Finding.on(user.subject())
            .message(
                user.text()
                    + " sees "
                    + measured.actualShown()
                    + " V in state "
                    + worst.state()
                    + "; it stands "
                    + measured.limitShown()
                    + " V"
                    + (most.why().isEmpty() ? "" : " (" + most.why() + ")"))
            .remedy(
                "feed it from the supply that it is made for"
                    + (most.why().isEmpty() ? "" : "; if it stands more, give its \"maxV\""))
            .measured(measured)
            .state(worst.state())
            .basis(most.basis().weaker(worst.rests(user.a()).basis()));
    if (!most.why().isEmpty()) {
      draft.level(Level.WARNING);
    }
    FedWay.to(facts.network(), worst, user).ifPresent(way -> draft.detail(way.text()));
    for (OperatingPoint other : facts.operating().all()) {
      double there = Math.abs(other.across(user));
      if (!other.equals(worst) && there > most.volts()) {
        draft.detail("also in state " + other.state() + ": " + Users.volts(there));
      }
    }
    return draft;
  }
}
