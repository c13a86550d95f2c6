package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** A material stands less heat than the air of its zone has. */
public final class MaterialTooCool implements Rule {
  private static final int NAMED = 6;

  private static final RuleInfo INFO =
      RuleInfo.of("material-too-cool", Heading.BODY, Level.ERROR)
          .summary("the air of a zone is hotter than a material in it stands")
          .subjects("wires, coverings, housings, splices and devices")
          .looksFor(
              """
              "maxC" of a part under the air temperature of where it is: of a wire, the hottest of
              the segments it runs along and the nodes it passes; of a covering, the hottest of its
              segments; of a housing, splice or device, its node or segment. A wire that is only an
              area stands 100 °C. Things of one part that are too cool in one place are one finding.
              A zone without "ambientC" has that of "defaults", and the finding says so; what it
              would let pass near hot parts, or where heat protection is asked for, is not judged.
              Heat that the current itself makes is another rule's matter.
              """)
          .why(
              """
              Insulation above its class hardens, cracks and comes off; a housing softens and lets
              its terminals go.
              """)
          .remedy(
              """
              Take a part of a higher class, or route it through a cooler zone.
              """)
          .basis(
              """
              Follows from the temperatures given. 100 °C for a bare area: the format's own
              default, common practice.
              """)
          .follows(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 105}}},
               "zones": {"engine": {"ambientC": 120}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "zone": "engine"}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 1, "maxC": 125}}},
               "zones": {"engine": {"ambientC": 120}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "zone": "engine"}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Group, List<Heated>> hot = new LinkedHashMap<>();
    for (Heated heated : Heated.all(facts)) {
      if (!heated.lacking().isEmpty()) {
        ledger.notJudged(heated.subject(), heated.lacking());
      } else if (heated.airC() <= heated.standsC()) {
        ledger.fine();
      } else if (!ledger.switchedOff(heated.subject())) {
        hot.computeIfAbsent(Group.of(heated), key -> new ArrayList<>()).add(heated);
      }
    }
    hot.forEach((group, members) -> ledger.finding(finding(members), subjects(members)));
  }

  /** Things of one kind and part, in one loom, that are too cool for one place. */
  private record Group(String noun, String part, String loom, String place) {
    static Group of(Heated heated) {
      return new Group(heated.noun(), heated.part(), heated.loom(), heated.place());
    }
  }

  private static List<Subject> subjects(List<Heated> members) {
    return members.stream().map(Heated::subject).distinct().toList();
  }

  private static Finding.Draft finding(List<Heated> members) {
    Heated first = members.get(0);
    List<Subject> subjects = subjects(members);
    Heated worst = first;
    Basis basis = first.basis();
    for (Heated one : members) {
      worst = one.airC() - one.standsC() > worst.airC() - worst.standsC() ? one : worst;
      basis = basis.weaker(one.basis());
    }
    Measured measured = Measured.over(worst.airC(), worst.standsC(), "°C");
    boolean one = subjects.size() == 1;
    Finding.Draft draft = Finding.on(subjects.get(0));
    subjects.stream().skip(1).forEach(draft::and);
    draft
        .kind(first.noun())
        .message(
            (one ? first.noun() + " " : first.nouns() + " ")
                + Series.and(subjects.stream().map(Subject::id).toList(), NAMED)
                + (first.part().isEmpty() ? "" : " (" + first.part() + ")")
                + (one ? " stands " : " stand ")
                + measured.limitShown()
                + " °C, but "
                + worst.place()
                + " has "
                + measured.actualShown()
                + " °C")
        .remedy(
            "take a part that stands at least "
                + Quoted.number(worst.airC())
                + " °C, or keep it out of there")
        .measured(measured)
        .basis(basis);
    members.stream()
        .map(Heated::byDefault)
        .flatMap(List::stream)
        .distinct()
        .limit(NAMED)
        .forEach(line -> draft.detail("rests on a default: " + line));
    return draft;
  }
}
