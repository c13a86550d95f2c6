package org.tugtest.report.sheets.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.facts.Facts;
import org.tugtest.report.Report;
import org.tugtest.report.html.Chromium;
import org.tugtest.report.html.OneChromium;
import org.tugtest.report.html.SampleCar;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The script that finds suspects, held against {@link Diagnosis}. */
@ExtendWith(OneChromium.class)
class SuspectsInBrowserTest {
  @TempDir Path folder;
  private final Chromium chromium;

  SuspectsInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
  }

  private Diagnosis open(Report report) throws IOException {
    Path page = Written.page(report, folder);
    chromium.open(page, "");
    Facts facts = report.harnesses().get(0).facts();
    Clues clues = Clues.of(facts);
    return new Diagnosis(facts, clues.loads(), clues.contacts());
  }

  @Test
  void agreesOnRandomSymptomsOfTheSample() throws IOException {
    holds(open(SampleCar.whole()), 40, 7);
  }

  @Test
  void agreesOnGeneratedLooms() throws IOException {
    for (int seed = 1; seed <= 12; seed++) {
      String json = GeneratedLoom.of(new Random(seed));
      Report report = SampleCar.checked(Map.of("a.harness.json", json), "a.harness.json");
      Diagnosis diagnosis = open(report);
      assertThat(diagnosis.faults()).as("seed %d", seed).isNotEmpty();
      holds(diagnosis, 25, seed);
    }
  }

  private void holds(Diagnosis diagnosis, int times, int seed) {
    Random random = new Random(seed);
    List<List<Diagnosis.Seen>> cases = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      cases.add(seen(diagnosis, random));
    }
    JsonNode answers = JsonMapper.shared().readTree(chromium.ask(script(cases)));
    for (int i = 0; i < times; i++) {
      List<Diagnosis.Seen> seen = cases.get(i);
      JsonNode answer = answers.get(i);
      Diagnosis.Suspected suspected = diagnosis.suspected(seen);
      List<Integer> found = new ArrayList<>();
      answer.get("found").forEach(one -> found.add(one.asInt()));
      assertThat(answer.get("misses").asInt()).as("%s", seen).isEqualTo(suspected.misses());
      assertThat(found).as("%s", seen).isEqualTo(suspected.faults());
      Diagnosis.Probe best = diagnosis.best(found, seen);
      JsonNode probe = answer.get("probe");
      assertThat(probe.isNull()).as("%s", seen).isEqualTo(best == null);
      if (best != null) {
        boolean contact = probe.has("contact");
        int thing = probe.get(contact ? "contact" : "load").asInt();
        assertThat(probe.get("most").asInt()).as("%s", seen).isEqualTo(best.most());
        assertThat(probe.get("squares").asInt()).as("%s", seen).isEqualTo(best.squares());
        assertThat(diagnosis.probe(found, probe.get("state").asInt(), contact, thing))
            .as("what the script proposes tells them apart as well as it says, %s", seen)
            .extracting(Diagnosis.Probe::most, Diagnosis.Probe::squares)
            .containsExactly(best.most(), best.squares());
      }
    }
  }

  /** A few of the things that one fault shows, now and then with one that it does not. */
  private static List<Diagnosis.Seen> seen(Diagnosis diagnosis, Random random) {
    int fault = random.nextInt(diagnosis.faults().size());
    List<Diagnosis.Seen> seen = new ArrayList<>();
    int wanted = 1 + random.nextInt(4);
    for (int tries = 0; tries < 400 && seen.size() < wanted; tries++) {
      int state = random.nextInt(diagnosis.states());
      boolean contact = random.nextInt(3) == 0;
      int thing = random.nextInt(contact ? diagnosis.contacts() : diagnosis.loads());
      String is = diagnosis.with(fault, state, contact, thing);
      boolean plain = is.equals("works") || is.equals("off");
      boolean again =
          seen.stream()
              .anyMatch(
                  one -> one.state() == state && one.contact() == contact && one.thing() == thing);
      if (is.isEmpty() || is.equals("unsure") || again || (plain && random.nextInt(12) > 0)) {
        continue;
      }
      boolean wrong = random.nextInt(10) == 0;
      String saw =
          !wrong
              ? is.equals("dim") && random.nextBoolean() ? "dead" : is
              : contact
                  ? (is.equals("volts") ? "nothing" : "volts")
                  : is.equals("off") ? "live" : "works";
      seen.add(new Diagnosis.Seen(state, contact, thing, saw));
    }
    return seen;
  }

  private static String script(List<List<Diagnosis.Seen>> cases) {
    StringBuilder script = new StringBuilder("const cases = [");
    for (List<Diagnosis.Seen> seen : cases) {
      script.append('[');
      for (Diagnosis.Seen one : seen) {
        script
            .append("{state: ")
            .append(one.state())
            .append(one.contact() ? ", contact: " : ", load: ")
            .append(one.thing())
            .append(", saw: '")
            .append(one.saw())
            .append("'},");
      }
      script.append("],");
    }
    return script
        + """
        ];
        const clues = Elements.data.clues;
        return JSON.stringify(cases.map(seen => {
          const {misses, found} = Suspects.find(clues, seen);
          const faults = found.map(one => one.fault);
          return {misses, found: faults, probe: Suspects.next(clues, faults, seen)};
        }));
        """;
  }
}
