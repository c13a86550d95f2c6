package org.tugtest.rule.body;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Covering;
import org.tugtest.model.Layout;
import org.tugtest.model.Near;
import org.tugtest.model.Need;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** A segment is too near to something that harms it. */
public final class ClearanceSmall implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("clearance-small", Heading.BODY, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("a segment is too near to something that can harm it")
          .subjects("segments with wires, once for each thing they are near")
          .looksFor(
              """
              "clearanceMm" of a segment on which wires run. Fuel lines: under 152 mm a warning,
              under 51 mm an error. Controls: under 13 mm an error. Moving parts: under 25 mm a
              warning. Hot parts: under 150 mm a warning, under 50 mm an error; with a covering
              that protects from heat only under 50 mm, a warning. Edges: under 9.5 mm a warning,
              unless a covering protects from abrasion. Where the zone is near something and the
              segment gives no clearance to it, that is not judged.
              """)
          .why(
              """
              What is too near finds the loom: heat hardens it, a shaft cuts it, a steering joint
              catches it, and a chafed feed beside a fuel line is a fire.
              """)
          .remedy(
              """
              Move or hold the loom farther away, or put the covering on it that this neighbour
              asks for; a clamp to a fuel line may only keep the two apart.
              """)
          .basis(
              """
              Fuel 152 and 51 mm: AC 43.13-1B 11-96 and 11-126. Controls 13 mm: AC 43.13-1B 11-125
              as restated elsewhere. Edge 9.5 mm: AC 43.13-1B 11-115. Moving parts 25 mm, hot parts
              150 and 50 mm: common practice; the handbooks give no figure for an exhaust.
              """)
          .setting(setting("fuelMm", 152, "preferred distance to fuel lines (AC 43.13-1B 11-96)"))
          .setting(setting("fuelLeastMm", 51, "least distance to fuel lines (AC 43.13-1B 11-96)"))
          .setting(
              setting(
                  "controlsMm", 13, "least distance to controls (AC 43.13-1B 11-125, restated)"))
          .setting(setting("movingMm", 25, "distance to moving parts (common practice)"))
          .setting(setting("hotMm", 150, "distance to hot parts (common practice)"))
          .setting(setting("hotLeastMm", 50, "least distance to hot parts (common practice)"))
          .setting(setting("edgeMm", 9.5, "distance to bare edges (AC 43.13-1B 11-115)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900,
                 "clearanceMm": {"fuel": 40}}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900,
                 "clearanceMm": {"fuel": 160, "moving": 30}}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              """)
          .build();

  private static Setting setting(String name, double standard, String meaning) {
    return new Setting(name, standard, 0, 5000, "mm", meaning);
  }

  /** A limit that is not kept. */
  private record Broken(double limit, Level level, Basis basis) {}

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      Subject subject = Subject.of("segments", segment.id());
      if (facts.bundles().of(segment.id()).isEmpty()) {
        ledger.notJudged(subject, Unjudged.EMPTY);
        continue;
      }
      Set<Near> near = facts.bundles().surroundings().ofSegment(segment.id()).near();
      for (Near thing : Near.values()) {
        Double clearance = segment.clearanceMm().get(thing);
        if (clearance != null) {
          judge(facts, settings, ledger, segment, thing, clearance);
        } else if (near.contains(thing)) {
          ledger.notJudged(
              subject, "its zone is near " + words(thing) + " and it gives no clearance to them");
        }
      }
    }
  }

  private static void judge(
      Facts facts,
      Settings settings,
      Ledger ledger,
      Layout.Segment segment,
      Near thing,
      double clearance) {
    Subject subject = Subject.of("segments", segment.id());
    Broken broken = broken(facts, settings, segment, thing, clearance);
    if (broken == null) {
      ledger.fine();
      return;
    }
    Measured measured = Measured.under(clearance, broken.limit(), "mm");
    ledger.finding(
        Finding.on(subject)
            .kind(thing.word())
            .message(
                "segment "
                    + segment.id()
                    + " is "
                    + Millimetres.actual(measured)
                    + " from "
                    + words(thing)
                    + "; at least "
                    + Millimetres.limit(measured)
                    + (broken.level() == Level.ERROR ? " are needed" : " are good practice"))
            .remedy(remedy(thing, broken.limit(), protects(facts, segment, Need.HEAT)))
            .measured(measured)
            .level(broken.level())
            .basis(broken.basis()));
  }

  private static @Nullable Broken broken(
      Facts facts, Settings settings, Layout.Segment segment, Near thing, double clearance) {
    Subject subject = Subject.of("segments", segment.id());
    return switch (thing) {
      case FUEL -> {
        double least = settings.number("fuelLeastMm", subject);
        double good = settings.number("fuelMm", subject);
        yield clearance < least
            ? new Broken(least, Level.ERROR, Basis.SOURCE)
            : under(clearance, good, Level.WARNING, Basis.SOURCE);
      }
      case CONTROLS ->
          under(clearance, settings.number("controlsMm", subject), Level.ERROR, Basis.SECONDARY);
      case MOVING ->
          under(
              clearance,
              settings.number("movingMm", subject),
              Level.WARNING,
              Basis.COMMON_PRACTICE);
      case HOT -> hot(facts, settings, segment, clearance);
      case EDGE ->
          protects(facts, segment, Need.ABRASION)
              ? null
              : under(clearance, settings.number("edgeMm", subject), Level.WARNING, Basis.SOURCE);
    };
  }

  private static @Nullable Broken hot(
      Facts facts, Settings settings, Layout.Segment segment, double clearance) {
    Subject subject = Subject.of("segments", segment.id());
    double least = settings.number("hotLeastMm", subject);
    boolean shielded = protects(facts, segment, Need.HEAT);
    if (clearance < least) {
      return new Broken(least, shielded ? Level.WARNING : Level.ERROR, Basis.COMMON_PRACTICE);
    }
    return shielded
        ? null
        : under(clearance, settings.number("hotMm", subject), Level.WARNING, Basis.COMMON_PRACTICE);
  }

  private static @Nullable Broken under(double clearance, double limit, Level level, Basis basis) {
    return clearance < limit ? new Broken(limit, level, basis) : null;
  }

  private static boolean protects(Facts facts, Layout.Segment segment, Need need) {
    for (String id : segment.coverings()) {
      Covering part = facts.harness().parts().coverings().get(id);
      if (part != null && part.protects().contains(need)) {
        return true;
      }
    }
    return false;
  }

  private static String words(Near thing) {
    return switch (thing) {
      case HOT -> "hot parts";
      case MOVING -> "moving parts";
      case CONTROLS -> "controls";
      case FUEL -> "fuel lines";
      case EDGE -> "bare edges";
    };
  }

  private static String remedy(Near thing, double limit, boolean shielded) {
    String away = "keep it " + Millimetres.text(limit) + " away";
    return switch (thing) {
      case HOT ->
          shielded
              ? away + ", or put a fixed shield between the two"
              : away + ", or put a covering on it that protects from heat";
      case EDGE -> away + ", or put a covering or grommet on it that protects from abrasion";
      case FUEL -> away + ", above the line, and clamp both";
      case MOVING, CONTROLS -> away + " over the whole travel, and hold it there";
    };
  }
}
