package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.Element;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** Sources without volts and loads without a figure of what they draw. */
public final class FigureMissing implements Rule {
  private static final int SHOWN = 8;
  private static final String MISREAD = "a field of it is not written rightly";

  private static final RuleInfo INFO =
      RuleInfo.of("figure-missing", Heading.LOAD, Level.NOTE)
          .gravest(Level.WARNING)
          .summary("a source without volts, or a load without amps, watts or ohms")
          .subjects("sources and loads")
          .looksFor(
              """
              Sources that give no "volts", one finding each, a warning; and loads that give none of
              "amps", "watts" and "ohms", one finding for the harness, with the list.
              """)
          .why(
              """
              Such a source feeds nothing and such a load draws nothing in any computation: currents,
              volts, heat and fuse ratings are judged as if it were not there.
              """)
          .remedy(
              """
              Give the open volts of the source. Give the load the amperes or watts of its data
              sheet, or those measured; "watts" with "atVolts" for a lamp or heater.
              """)
          .basis("Follows from the format.")
          .failing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "HORN": {"elements": {"horn": {"kind": "load", "a": "1", "b": "2"}}}}}
              """)
          .passing(
              """
              {"format": 1,
               "devices": {
                 "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-",
                                               "volts": 12.6}}},
                 "HORN": {"elements": {"horn": {"kind": "load", "a": "1", "b": "2", "amps": 4}}}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Elements.In<Element.Source> source : Elements.of(facts, Element.Source.class)) {
      if (source.element().volts() != null) {
        ledger.fine();
      } else if (isMisread(facts, source)) {
        ledger.notJudged(source.subject(), MISREAD);
      } else {
        ledger.finding(ofSource(source));
      }
    }
    List<Subject> silent = new ArrayList<>();
    for (Elements.In<Element.Load> load : Elements.of(facts, Element.Load.class)) {
      Element.Load drawn = load.element();
      if (drawn.amps() != null || drawn.watts() != null || drawn.ohms() != null) {
        ledger.fine();
      } else if (isMisread(facts, load)) {
        ledger.notJudged(load.subject(), MISREAD);
      } else if (!ledger.switchedOff(load.subject())) {
        silent.add(load.subject());
      }
    }
    if (!silent.isEmpty()) {
      ledger.finding(ofLoads(facts, silent), silent);
    }
  }

  /** Whether something is wrong with the element as written, in its device or in its type. */
  private static boolean isMisread(Facts facts, Elements.In<?> in) {
    Device device = facts.harness().devices().get(in.device());
    String type = device == null ? null : device.type();
    return facts.misread().at("devices", in.device(), "elements", in.name())
        || (type != null
            && facts.misread().at("parts", "deviceTypes", type, "elements", in.name()));
  }

  private static Finding.Draft ofSource(Elements.In<Element.Source> source) {
    return Finding.on(source.subject())
        .level(Level.WARNING)
        .message("source " + source.text() + " gives no volts, so it feeds nothing")
        .remedy(
            "give \"volts\", the open volts of " + source.text() + ": 12.6 for a full lead cell");
  }

  private static Finding.Draft ofLoads(Facts facts, List<Subject> loads) {
    List<String> names = loads.stream().map(Subject::id).toList();
    boolean one = names.size() == 1;
    Finding.Draft draft =
        Finding.on(loads.get(0))
            .message(
                (one ? "load " : names.size() + " loads give none of amps, watts and ohms: ")
                    + Series.and(names, SHOWN)
                    + (one ? " gives none of amps, watts and ohms" : ""))
            .remedy("give what it draws: \"amps\", or \"watts\", or \"ohms\"");
    loads.subList(1, loads.size()).forEach(draft::and);
    loads.forEach(load -> draft.at(facts.places().of(load.place())));
    return draft;
  }
}
