package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.model.Evidence;
import org.tugtest.model.Loom;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;

class UnionTest {
  private static ReadHarness two(String first, String second) {
    return Said.read(
        Map.of(
            "car.harness.json",
            "{\"format\": 1, \"sketch\": true, \"uses\": [\"b.json\"]," + first + "}",
            "b.json",
            "{\"format\": 1," + second + "}"));
  }

  @Test
  void keepsTheFirstOfTwoWithOneId() {
    ReadHarness read =
        two("\n\"zones\": {\"z\": {\"ambientC\": 50}}", "\n\"zones\": {\"z\": {\"ambientC\": 60}}");
    assertThat(read.harness().zones().get("z").ambientC()).isEqualTo(50);
    Problem problem = read.problems().get(0);
    assertThat(read.problems()).hasSize(1);
    assertThat(problem.kind()).isEqualTo(Problem.Kind.ID_GIVEN_TWICE);
    assertThat(problem.subject()).isEqualTo("zones/z");
    assertThat(problem.message())
        .isEqualTo("zone z is given in car.harness.json, line 2 and again in b.json, line 2.");
    assertThat(problem.remedy()).isEqualTo("Rename or delete one of the two; nothing overrides.");
    assertThat(problem.at())
        .extracting(Place::shown)
        .containsExactly("b.json:2:11", "car.harness.json:2:11");
  }

  @Test
  void saysWhenBothSayTheSame() {
    ReadHarness read = two("\"zones\": {\"z\": {}}", "\"zones\": {\"z\": {}}");
    assertThat(read.problems())
        .extracting(Problem::remedy)
        .containsExactly("Delete one of the two; they say the same.");
  }

  @Test
  void sharesIdsAmongDevicesConnectorsSplicesWiresAndGroups() {
    ReadHarness read =
        Said.read(
            "{\"format\": 1, \"sketch\": true, \"devices\": {\"A\": {}}, \"connectors\": {\"A\":"
                + " {}, \"B\": {}}, \"splices\": {\"B\": {}, \"C\": {}}, \"wires\": {\"C\": {},"
                + " \"D\": {}}, \"groups\": {\"D\": {\"kind\": \"cable\", \"wires\": [\"C\"]}},"
                + " \"zones\": {\"A\": {}}, \"layout\": {\"nodes\": {\"A\": {}}}}");
    assertThat(read.problems())
        .extracting(Problem::message)
        .containsExactly(
            "A is a device in car.harness.json, line 1 and a connector in car.harness.json, line"
                + " 1.",
            "B is a connector in car.harness.json, line 1 and a splice in car.harness.json, line"
                + " 1.",
            "C is a splice in car.harness.json, line 1 and a wire in car.harness.json, line 1.",
            "D is a wire in car.harness.json, line 1 and a group in car.harness.json, line 1.");
    assertThat(read.harness().connectors()).containsOnlyKeys("B");
    assertThat(read.harness().wires()).containsOnlyKeys("D");
  }

  @Test
  void tellsIdsApartOnlyByMoreThanCase() {
    ReadHarness read =
        Said.read("{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {}, \"w1\": {}}}");
    assertThat(read.problems())
        .extracting(Problem::message)
        .containsExactly(
            "w1 in car.harness.json, line 1 and W1 in car.harness.json, line 1 differ only in upper"
                + " and lower case.");
    assertThat(read.harness().wires()).containsOnlyKeys("W1");
  }

  @Test
  void givesEachKindOfPartItsOwnIds() {
    ReadHarness read =
        Said.read(
            "{\"format\": 1, \"parts\": {\"supports\": {\"x\": {\"kind\": \"tie\"}}, \"fuses\":"
                + " {\"x\": {\"ratingA\": 5}}}, \"zones\": {\"x\": {}}, \"wires\": {}}");
    assertThat(read.problems()).isEmpty();
  }

  @Test
  void joinsTheFilesOfOneLoom() {
    ReadHarness read =
        two(
            "\"loom\": {\"id\": \"nose\", \"title\": \"Nose\"}, \"wires\": {\"W1\": {}}",
            "\"loom\": {\"id\": \"nose\", \"stage\": \"found\", \"evidence\": \"guess\"},"
                + " \"wires\": {\"W2\": {}}");
    assertThat(read.problems()).isEmpty();
    assertThat(read.harness().looms())
        .containsExactly(
            Map.entry("nose", new Loom("nose", "Nose", null, Evidence.GUESS, Loom.Stage.FOUND)));
    assertThat(read.harness().wires().get("W2").loom()).isEqualTo("nose");
  }

  @Test
  void reportsALoomDescribedTwice() {
    ReadHarness read =
        two(
            "\"loom\": {\"id\": \"nose\", \"title\": \"Nose\"}",
            "\"loom\": {\"id\": \"nose\", \"title\": \"Front\"}");
    assertThat(Said.problems(read))
        .containsExactly(
            "1:37 title of loom nose is given in car.harness.json and in b.json. Keep it in one of"
                + " the two files; \"id\" alone joins the other to the loom.");
    assertThat(read.harness().looms().get("nose").title()).isEqualTo("Nose");
  }

  @Test
  void reportsLoomsThatDifferOnlyInCase() {
    ReadHarness read = two("\"loom\": {\"id\": \"nose\"}", "\"loom\": {\"id\": \"Nose\"}");
    assertThat(read.problems()).extracting(Problem::subject).containsExactly("looms/Nose");
  }

  @Test
  void doesNotDependOnTheOrderOfUses() {
    Map<String, String> one =
        Map.of(
            "car.harness.json", "{\"format\": 1, \"uses\": [\"a.json\", \"b.json\"]}",
            "a.json", "{\"format\": 1, \"zones\": {\"z\": {\"ambientC\": 1}}}",
            "b.json", "{\"format\": 1, \"zones\": {\"z\": {\"ambientC\": 2}}}");
    Map<String, String> other = new HashMap<>(one);
    other.put("car.harness.json", "{\"format\": 1, \"uses\": [\"b.json\", \"a.json\"]}");
    assertThat(Said.read(other).harness()).isEqualTo(Said.read(one).harness());
    assertThat(Said.read(other).problems()).isEqualTo(Said.read(one).problems());
  }
}
