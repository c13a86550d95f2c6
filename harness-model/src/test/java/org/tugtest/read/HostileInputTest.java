package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.text.Problem;

/** Input that is meant to harm ends in a problem; never an exception, a hang or a full memory. */
class HostileInputTest {
  private static ReadHarness read(byte[] bytes) {
    return assertTimeoutPreemptively(
        Duration.ofMinutes(10),
        () ->
            new HarnessReader(
                    MemoryFiles.ofBytes(Map.of("car.harness.json", bytes)), ReadLimits.STANDARD)
                .read("car.harness.json"));
  }

  private static List<String> said(String text) {
    return Said.problems(read(text.getBytes(StandardCharsets.UTF_8)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{\"a\":", "[{\"a\":", "{\"wires\": {\"W1\": {\"x\": ["})
  void refusesADepthBomb(String level) {
    assertThat(said("{\"x\": " + level.repeat(200_000)))
        .singleElement()
        .asString()
        .contains("car.harness.json is nested deeper than 32 levels.");
    assertThat(said(level.repeat(1_000_000))).hasSize(1);
  }

  @Test
  void allowsTheGreatestDepthAndNoMore() {
    assertThat(said("{\"x\": " + "[".repeat(31) + "]".repeat(31) + ", \"format\": 1}"))
        .singleElement()
        .asString()
        .contains("\"x\" is no field of this file.");
    assertThat(said("{\"x\": " + "[".repeat(32) + "]".repeat(32) + ", \"format\": 1}"))
        .containsExactly(
            "1:38 car.harness.json is nested deeper than 32 levels. No harness needs that; look for"
                + " brackets that should have been closed.");
  }

  @Test
  void refusesTextsThatAreTooLong() {
    String start = "{\"format\": 1, \"note\": \"";
    assertThat(said(start + "x".repeat(4_000) + "\"}")).isEmpty();
    assertThat(said(start + "x".repeat(4_001) + "\"}"))
        .containsExactly(
            "1:23 car.harness.json holds a text of 4001 characters; at most 4000 are read. Shorten"
                + " it.");
    assertThat(said("{\"format\": 1, \"" + "n".repeat(4_001) + "\": 1}"))
        .singleElement()
        .asString()
        .contains("holds a text of 4001 characters");
    assertThat(said("{\"format\": 1, \"x\": 1" + "0".repeat(1_000) + "}"))
        .singleElement()
        .asString()
        .contains("holds a number of 1001 characters; at most 1000 are read.");
  }

  @Test
  void refusesAFileOfTwoHundredMegabytesByItsSizeAlone() {
    byte[] huge = new byte[200 << 20];
    Arrays.fill(huge, (byte) 'x');
    byte[] start = "{\"format\": 1, \"note\": \"".getBytes(StandardCharsets.UTF_8);
    System.arraycopy(start, 0, huge, 0, start.length);
    SourceFiles files = filesOf(huge);
    Runtime runtime = Runtime.getRuntime();
    runtime.gc();
    long before = runtime.totalMemory() - runtime.freeMemory();
    ReadHarness read = new HarnessReader(files, ReadLimits.STANDARD).read("car.harness.json");
    long grown = runtime.totalMemory() - runtime.freeMemory() - before;
    assertThat(Said.problems(read))
        .containsExactly(
            "1:1 car.harness.json is 200.0 MiB long; files up to 64.0 MiB are read. Split it, and"
                + " name the pieces under \"uses\".");
    assertThat(grown).isLessThan(50 << 20);
  }

  private static SourceFiles filesOf(byte[] bytes) {
    return new SourceFiles() {
      @Override
      public List<String> paths() {
        return List.of("car.harness.json");
      }

      @Override
      public Content open(String path) {
        return new Content.Bytes(bytes);
      }
    };
  }

  @Test
  void refusesALongTextInALargeFile() {
    assertThat(said("{\"format\": 1, \"note\": \"" + "x".repeat(40 << 20) + "\"}"))
        .singleElement()
        .asString()
        .contains("holds a text of 41943040 characters");
  }

  @Test
  void endsWithManyBrokenEntries() {
    StringBuilder text = new StringBuilder("{\"format\": 1, \"wires\": {");
    for (int i = 0; i < 20_000; i++) {
      text.append(i == 0 ? "" : ",").append("\"W").append(i).append("\": {\"x\": 1, \"from\": 2}");
    }
    assertThat(said(text + "}}")).hasSize(501);
  }

  @Test
  void givesUpWhereNearlyEverythingIsWrong() {
    String wrong = "1,".repeat(200_000) + "1";
    assertThat(said("{\"format\": 1, \"uses\": [" + wrong + "]}"))
        .singleElement()
        .asString()
        .startsWith(
            "1:24 car.harness.json has 50000 places and more that the format does not allow.");
    assertThat(said("{\"format\": 1, \"uses\": [" + "1,".repeat(10_000) + "1]}")).hasSize(501);
  }

  @Test
  void refusesAFileOfTooManyTokens() {
    assertThat(said("{\"format\": 1, \"uses\": [" + "1,".repeat(6_000_000) + "1]}"))
        .containsExactly(
            "1:12000014 car.harness.json holds more than 6000000 names, values and brackets. Split"
                + " it, and name the pieces under \"uses\".");
  }

  @Test
  void endsWithManyTwins() {
    String text = "{\"format\": 1" + ", \"title\": \"a\"".repeat(20_000) + "}";
    assertThat(said(text)).hasSize(501);
  }

  @Test
  void refusesNulBytesAndOtherEncodings() {
    assertThat(said("{\"format\": 1, \"title\": \"a\u0000b\"}"))
        .singleElement()
        .asString()
        .startsWith("1:26 car.harness.json has the control character \\u0000 in a text.");
    assertThat(said("\u0000\u0000{}")).singleElement().asString().contains("U+0000");
    for (Charset wide : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE)) {
      String mark = wide.equals(StandardCharsets.UTF_16) ? "" : "\uFEFF";
      assertThat(Said.problems(read((mark + "{\"format\": 1}").getBytes(wide))))
          .containsExactly("1:1 car.harness.json is UTF-16, not UTF-8. Save it as UTF-8.");
    }
    for (String wide : List.of("UTF-16LE", "UTF-16BE", "UTF-32", "UTF-32LE", "UTF-32BE")) {
      for (String mark : List.of("", "\uFEFF")) {
        byte[] bytes = (mark + "{\"format\": 1}").getBytes(Charset.forName(wide));
        assertThat(Said.problems(read(bytes)))
            .containsExactly(
                "1:1 car.harness.json is "
                    + wide.substring(0, 6)
                    + ", not UTF-8. Save it as UTF-8.");
      }
    }
  }

  @Test
  void findsThePlaceOfANameWithAnyCharacter() {
    for (String name :
        List.of("W\\n1", "W\\\"1", "W/1", "W~1", "W\\\\1", "W\\t1", "W.1", "W'1", "")) {
      String text =
          "{\"format\": 1,\n\"wires\": {\n\"" + name + "\": {\"from\": 5, \"to\": \"A:1\"}}}";
      assertThat(said(text))
          .as(name)
          .anyMatch(problem -> problem.startsWith("3:" + (name.length() + 14) + " from of "));
    }
  }

  @Test
  void saysWhichByteIsNoUtf8() {
    byte[] latin =
        "{\"format\": 1,\r\n \"title\": \"Gerät\"}".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(Said.problems(read(latin)))
        .containsExactly(
            "2:15 car.harness.json is not UTF-8: the byte E4 at line 2, column 15 is no character."
                + " Save the file as UTF-8.");
    assertThat(said("{\"format\": 1, \"title\": \"\uFFFD\"}")).isEmpty();
    byte[] cut = Arrays.copyOf("{\"a\": \"ä".getBytes(StandardCharsets.UTF_8), 8);
    assertThat(Said.problems(read(cut))).singleElement().asString().contains("the byte C3");
    byte[] surrogate = {'"', (byte) 0xED, (byte) 0xA0, (byte) 0x80, '"'};
    assertThat(Said.problems(read(surrogate))).singleElement().asString().contains("is not UTF-8");
  }

  @Test
  void findsABadByteFarBehind() {
    byte[] bytes =
        ("{\"format\": 1,\n" + " ".repeat(100_000) + "?}").getBytes(StandardCharsets.UTF_8);
    bytes[bytes.length - 2] = (byte) 0xFF;
    assertThat(Said.problems(read(bytes)))
        .singleElement()
        .asString()
        .startsWith("2:100001 car.harness.json is not UTF-8: the byte FF at line 2, column 100001");
  }

  @Test
  void takesAByteOrderMarkForNothing() {
    assertThat(said("\uFEFF{\"format\": 1}")).isEmpty();
    assertThat(said("\uFEFF{\"format\": 1, x}")).singleElement().asString().startsWith("1:15 ");
    assertThat(said("\uFEFF\uFEFF{\"format\": 1}")).singleElement().asString().contains("U+FEFF");
  }

  @Test
  void dropsHalvesOfSurrogatePairs() {
    ReadHarness read =
        Said.read("{\"format\": 1, \"title\": \"a\\ud83d\", \"description\": \"\\ud83d\\ude97\"}");
    assertThat(Said.problems(read))
        .containsExactly(
            "1:24 title of this file is \"a\\ud83d\", which does not have the form expected there."
                + " A text on one line, at most 200 characters.");
    assertThat(read.harness().title()).isNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e400", "-1e400", "1e99999", "123456789012345678901234567890", "1e-999"})
  void bearsNumbersOfAnySize(String number) {
    ReadHarness read =
        Said.read(
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"cutMm\": "
                + number
                + "}},"
                + " \"layout\": {\"segments\": {\"s\": {\"from\": \"a\", \"to\": \"b\","
                + " \"lengthMm\": 1, \"supports\": "
                + number
                + "}}}}");
    Double cut = read.harness().wires().get("W1").cutMm();
    assertThat(cut == null || cut == 0).isTrue();
    assertThat(read.problems().isEmpty()).isEqualTo(number.equals("1e-999"));
  }

  @Test
  void makesZeroOfMinusZero() {
    ReadHarness read =
        Said.read(
            "{\"format\": 1, \"sketch\": true, \"wires\": {\"W1\": {\"cutMm\": -0.0, \"builtMm\":"
                + " -0}}}");
    assertThat(read.problems()).isEmpty();
    assertThat(read.harness().wires().get("W1").cutMm()).isEqualTo(0.0);
    assertThat(read.harness().wires().get("W1").builtMm()).isEqualTo(0.0);
  }

  @Test
  void bearsNamesFullOfEscapes() {
    String name = "~1/~0//".repeat(400);
    ReadHarness read =
        Said.read("{\"format\": 1, \"limits\": {\"r\": {\"places\": {\"" + name + "\": {}}}}}");
    assertThat(read.problems()).hasSize(1);
    assertThat(read.problems().get(0).at().get(0).pointer())
        .isEqualTo("/limits/r/places/" + name.replace("~", "~0").replace("/", "~1"));
  }

  @Test
  void bearsNumbersAsNamesInPlaceOfIndexes() {
    assertThat(
            said(
                "{\"format\": 1, \"uses\": {\"0\": 1}, \"wires\": {\"99999999999\": {\"via\":"
                    + " {\"99999999999\": 1}}}}"))
        .hasSizeGreaterThan(1);
  }

  @Test
  void staysWithinTheFolders() {
    ReadHarness read =
        Said.read("{\"format\": 1, \"uses\": [\"../../../../etc/hosts\", \"\\u0000\"]}");
    assertThat(read.problems()).hasSize(2);
    assertThat(read.harness().files()).containsExactly("car.harness.json");
    assertThat(read.problems())
        .extracting(Problem::kind)
        .contains(Problem.Kind.FILE_UNREADABLE, Problem.Kind.SHAPE_WRONG);
  }
}
