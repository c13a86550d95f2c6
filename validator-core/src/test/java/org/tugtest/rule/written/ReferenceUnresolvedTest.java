package org.tugtest.rule.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tugtest.check.RuleCatalog;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.finding.Finding;
import org.tugtest.rule.Judged;
import org.tugtest.rule.connectors.SpliceUnderfilled;

class ReferenceUnresolvedTest {
  /** A harness that uses every reference of the format, each once or more. */
  private static final String WHOLE =
      """
      {"format": 1,
       "loom": {"id": "rear"},
       "parts": {
         "wires": {"w1": {"areaMm2": 1, "maxC": 125}},
         "housings": {
           "skt": {"side": "socket", "rows": [["1", "2"]], "matesWith": ["pin"],
                   "terminals": ["tf"], "seals": ["sf"], "cavities": {"2": {"family": "t1"}}},
           "pin": {"side": "pin", "rows": [["2", "1"]]}},
         "terminals": {"tf": {"family": "t2", "side": "socket", "areaMinMm2": 0.5,
                              "areaMaxMm2": 1.5}},
         "seals": {"sf": {"family": "t2", "insulationMinMm": 1, "insulationMaxMm": 3}},
         "splices": {"sp": {"areaMinMm2": 1, "areaMaxMm2": 6, "maxWires": 4}},
         "fuses": {"mini-10": {"ratingA": 10}},
         "coverings": {"tube": {"kind": "heat-shrink"}, "boot": {"kind": "heat-shrink"},
                       "sleeve": {"kind": "tape"}, "wrap": {"kind": "tape"}},
         "supports": {"clip": {"kind": "clip"}},
         "deviceTypes": {
           "lamp": {"ports": {"plug": {"housing": "pin", "pins": {"1": "L"}}},
                    "elements": {"bulb": {"kind": "load", "a": "L", "b": "2", "watts": 5}}},
           "relay": {"pins": {"30": {"at": "dash"}, "87": {}, "85": {}, "86": {}},
                     "positions": ["rest", "forced"],
                     "elements": {"coil": {"kind": "coil", "a": "85", "b": "86", "ohms": 90},
                                  "main": {"kind": "contact", "a": "30", "b": "87",
                                           "coil": "coil"}}}}},
       "devices": {
         "LAMP": {"type": "lamp", "at": "tail"},
         "REL": {"type": "relay"},
         "SW": {"positions": ["off", "side"],
                "elements": {"c": {"kind": "contact", "a": "1", "b": "2", "closedIn": ["side"]}}},
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}},
                 "boltedTo": {"-": "BLOCK:m8"}},
         "BLOCK": {"pins": {"m8": {}, "m6": {}}},
         "ALT": {"elements": {"gen": {"kind": "source", "plus": "B+", "minus": "c",
                                      "generator": true, "fedBy": "field"},
                              "field": {"kind": "load", "a": "D+", "b": "c", "use": "free"}}},
         "PRB": {"pins": {"s": {}, "r": {}},
                 "elements": {"v": {"kind": "signal", "pin": "s", "type": "analog",
                                    "reference": "r"}}},
         "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "o1"}}}},
       "fitted": {"FB.f1": "mini-10"},
       "connectors": {
         "X1": {"housing": "skt", "mates": "LAMP.plug", "at": "dash", "terminals": ["tf"],
                "seals": ["sf"], "boot": "boot",
                "cavities": {"1": {"terminal": "tf", "seal": "sf"}}, "pinMap": {"1": "2", "2": "1"}},
         "X2": {"housing": "pin", "mates": "X3"}, "X3": {"housing": "skt"}},
       "splices": {"S1": {"at": "tail", "part": "sp", "coverings": ["tube"]},
                   "S2": {"on": "seg", "offsetMm": 10}},
       "wires": {
         "W1": {"from": "BAT:+", "to": "FB:in", "part": "w1", "via": ["dash"], "circuit": "feed",
                "fromTerminal": "tf", "toTerminal": "tf"},
         "W2": {"from": "X1:1", "to": "S1", "part": "w1", "circuit": "lamp"}},
       "groups": {"G1": {"kind": "cable", "wires": ["W1"], "screen": "W2"}},
       "layout": {
         "nodes": {"dash": {"zone": "cabin", "coverings": ["sleeve"]}, "tail": {}},
         "segments": {"seg": {"from": "dash", "to": "tail", "lengthMm": 90, "zone": "cabin",
                              "coverings": ["wrap"], "supportPart": "clip", "supports": 1}}},
       "zones": {"cabin": {}},
       "states": {
         "rest": {"on": ["LAMP"]},
         "night": {"set": {"SW": "side", "REL.main": "on"}, "on": ["LAMP.bulb", "REL.coil"],
                   "running": ["ALT"], "volts": {"BAT": 12.5}, "from": "rest"}},
       "limits": {"cavity-doubled": {"level": "error", "places": {"connectors/X1:1": {}}}},
       "waivers": {
         "a": {"rule": "cavity-doubled", "at": "devices/REL:30", "reason": "as the donor has it",
               "state": "night"},
         "b": {"rule": "cavity-doubled", "at": "parts/wires/w1", "reason": "as the donor has it"}},
       "expectations": {
         "e1": {"that": "fed", "at": "LAMP.bulb", "in": "night", "reason": "seen at night"},
         "e2": {"that": "dead", "at": "LAMP:L", "in": "rest", "reason": "seen at night"},
         "e3": {"that": "joined", "points": ["S1", "X1:1"], "reason": "one net"},
         "e4": {"that": "fused-by", "at": "LAMP.bulb", "fuse": "FB.f1", "reason": "f1"},
         "e5": {"that": "routes-apart", "wires": [["W1"], ["W2"]], "reason": "apart"},
         "e6": {"that": "routes-apart", "circuits": [["feed"], ["lamp"]], "reason": "apart"},
         "e7": {"that": "lighter-than", "loom": "rear", "grams": 900, "reason": "budget"}}}
      """;

  private static Judged judged(String json) {
    return judged(Map.of(Judged.ROOT, json));
  }

  private static Judged judged(Map<String, String> files) {
    Facts facts = Facts.of(Judged.read(files), Judged.TODAY, RuleCatalog.standard().known());
    return Judged.of(new ReferenceUnresolved(), facts);
  }

  @Test
  void everythingIsThereInTheWholeHarness() {
    Judged judged = judged(WHOLE);
    assertThat(Judged.read(Map.of(Judged.ROOT, WHOLE)).problems()).isEmpty();
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().judged()).isEqualTo(32);
    assertThat(judged.coverage().notJudged()).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          ["pin"],                |["pine"],               |housing skt names pine, but no housing is called that
          "terminals": ["tf"], "s |"terminals": ["tg"], "s |housing skt names tg, but no terminal is called that
          "seals": ["sf"], "cav   |"seals": ["sg"], "cav   |housing skt names sg, but no seal is called that
          {"2": {"family"         |{"3": {"family"         |housing skt names 3, but no cavity of housing skt is called that
          {"housing": "pin", "pins|{"housing": "pen", "pins|port plug of device type lamp names pen, but no housing is called that
          "pins": {"1": "L"}      |"pins": {"3": "L"}      |port plug of device type lamp names 3, but no cavity of housing pin is called that
          "a": "L", "b": "2"      |"a": "L", "b": "7"      |element bulb of device type lamp names 7, but no pin of device type lamp is called that
          {"at": "dash"}          |{"at": "dush"}          |device type relay names dush, but no node is called that
          "coil": "coil"          |"coil": "spool"         |element main of device type relay names spool, but no coil of device type relay is called that
          "fedBy": "field"        |"fedBy": "gen"          |element gen of device ALT names gen, but no load of ALT is called that
          "closedIn": ["side"]    |"closedIn": ["head"]    |element c of device SW names head, but no position of SW is called that
          "type": "lamp", "at"    |"type": "lomp", "at"    |device LAMP names lomp, but no device type is called that
          "at": "tail"},          |"at": "tale"},          |device LAMP names tale, but no node is called that
          {"-": "BLOCK:m8"}       |{"x": "BLOCK:m8"}       |device BAT names x, but no pin of BAT is called that
          {"-": "BLOCK:m8"}       |{"-": "BLOCK:m9"}       |device BAT names m9, but no pin of BLOCK is called that
          {"-": "BLOCK:m8"}       |{"-": "BLOK:m8"}        |device BAT names BLOK, but no device is called that
          {"-": "BLOCK:m8"}       |{"-": "BLOCK"}          |device BAT is bolted to BLOCK, which is no pin
          "reference": "r"        |"reference": "q"        |element v of device PRB names q, but no pin of PRB is called that
          {"FB.f1": "mini-10"}    |{"FB.f2": "mini-10"}    |the fuse fitted in FB.f2 names FB.f2, but no fuse element is called that
          {"FB.f1": "mini-10"}    |{"FB.f1": "mini-15"}    |the fuse fitted in FB.f1 names mini-15, but no fuse part is called that
          {"FB.f1": "mini-10"}    |{"SW.c": "mini-10"}     |the fuse fitted in SW.c names SW.c, but no fuse element is called that
          "X3": {"housing": "skt" |"X3": {"housing": "skit"|connector X3 names skit, but no housing is called that
          "mates": "LAMP.plug"    |"mates": "LAMP.socket"  |connector X1 names socket, but no port of LAMP is called that
          "mates": "LAMP.plug"    |"mates": "LUMP.plug"    |connector X1 names LUMP, but no connector or device is called that
          "mates": "LAMP.plug"    |"mates": "X4"           |connector X1 names X4, but no connector or device is called that
          "mates": "X3"           |"mates": "X3.A"         |connector X2 mates X3.A, but connector X3 has no ports
          "at": "dash", "terminals|"at": "dish", "terminals|connector X1 names dish, but no node is called that
          "terminals": ["tf"],\\n   |"terminals": ["tg"],\\n |connector X1 names tg, but no terminal is called that
          "seals": ["sf"], "boot  |"seals": ["sg"], "boot  |connector X1 names sg, but no seal is called that
          "boot": "boot"          |"boot": "boat"          |connector X1 names boat, but no covering is called that
          {"1": {"terminal": "tf" |{"1": {"terminal": "tg" |connector X1 names tg, but no terminal is called that
          "seal": "sf"}}          |"seal": "sg"}}          |connector X1 names sg, but no seal is called that
          {"1": {"terminal"       |{"9": {"terminal"       |connector X1 names 9, but no cavity of housing skt is called that
          "pinMap": {"1": "2",    |"pinMap": {"9": "2",    |connector X1 names 9, but no cavity of housing skt is called that
          "pinMap": {"1": "2",    |"pinMap": {"1": "9",    |connector X1 names 9, but no cavity of housing pin is called that
          "pinMap": {"1": "2",    |"pinMap": {"1": "1",    |connector X1 maps its cavities 1 and 2 to the same contact 1
          "S1": {"at": "tail"     |"S1": {"at": "tall"     |splice S1 names tall, but no node is called that
          "part": "sp"            |"part": "sq"            |splice S1 names sq, but no splice part is called that
          ["tube"]                |["tub"]                 |splice S1 names tub, but no covering is called that
          "on": "seg"             |"on": "sag"             |splice S2 names sag, but no segment is called that
          "from": "BAT:+"         |"from": "BAD:+"         |wire W1 names BAD, but no connector, device or splice is called that
          "to": "S1"              |"to": "S11"             |wire W2 names S11, but no connector, device or splice is called that
          "FB:in", "part": "w1"   |"FB:in", "part": "w2"   |wire W1 names w2, but no wire part is called that
          "via": ["dash"]         |"via": ["seg"]          |wire W1 names seg, but no node is called that
          "fromTerminal": "tf"    |"fromTerminal": "tg"    |wire W1 names tg, but no terminal is called that
          "toTerminal": "tf"      |"toTerminal": "tg"      |wire W1 names tg, but no terminal is called that
          "wires": ["W1"],        |"wires": ["W9"],        |group G1 names W9, but no wire is called that
          "screen": "W2"          |"screen": "W3"          |group G1 names W3, but no wire is called that
          {"zone": "cabin"        |{"zone": "cabine"       |node dash names cabine, but no zone is called that
          ["sleeve"]              |["sleve"]               |node dash names sleve, but no covering is called that
          {"from": "dash"         |{"from": "desh"         |segment seg names desh, but no node is called that
          "to": "tail"            |"to": "teil"            |segment seg names teil, but no node is called that
          90, "zone": "cabin"     |90, "zone": "cobin"     |segment seg names cobin, but no zone is called that
          ["wrap"]                |["warp"]                |segment seg names warp, but no covering is called that
          "supportPart": "clip"   |"supportPart": "clap"   |segment seg names clap, but no support is called that
          {"SW": "side"           |{"SW": "head"           |state night names head, but no position of SW is called that
          {"SW": "side"           |{"SQ": "side"           |state night names SQ, but no device is called that
          "REL.main": "on"        |"REL.coil": "on"        |state night names REL.coil, but no contact is called that
          "REL.main": "on"        |"REL.main": "forced"    |state night names forced, but no setting of a contact is called that
          {"on": ["LAMP"]}        |{"on": ["FB"]}          |state rest names FB, but no load or coil is called that
          "on": ["LAMP.bulb"      |"on": ["LAMP.blub"      |state night names LAMP.blub, but no load or coil is called that
          "running": ["ALT"]      |"running": ["BAT"]      |state night names BAT, but no generator is called that
          {"BAT": 12.5}           |{"FB": 12.5}            |state night names FB, but no source is called that
          "from": "rest"          |"from": "test"          |state night names test, but no state is called that
          "from": "rest"          |"from": "night"         |state night is entered from itself
          "limits": {"cavity-d    |"limits": {"cavety-d    |"limits" names cavety-doubled, but no rule is called that
          {"level": "error", "pl  |{"percent": 5, "pl      |"limits" names percent, but no setting of cavity-doubled is called that
          {"connectors/X1:1": {}} |{"connectors/X1:9": {}} |"limits" names 9, but no cavity of X1 is called that
          {"connectors/X1:1": {}} |{"conectors/X1": {}}    |"limits" names conectors, but no section is called that
          "a": {"rule": "cavity-d |"a": {"rule": "cavety-d |waiver a names cavety-doubled, but no rule is called that
          "devices/REL:30"        |"devices/REL:31"        |waiver a names 31, but no pin of REL is called that
          "devices/REL:30"        |"devices/REL.spool"     |waiver a names spool, but no element or port of REL is called that
          "devices/REL:30"        |"devices/RAL"           |waiver a names RAL, but no device is called that
          "parts/wires/w1"        |"parts/wires/w2"        |waiver b names w2, but no wire part is called that
          "state": "night"        |"state": "knight"       |waiver a names knight, but no state is called that
          "fed", "at": "LAMP.bulb"|"fed", "at": "LAMP.plug"|expectation e1 names LAMP.plug, but no load or coil is called that
          "in": "rest"            |"in": "rust"            |expectation e2 names rust, but no state is called that
          "at": "LAMP:L"          |"at": "LAMP:M"          |expectation e2 names M, but no pin of LAMP is called that
          "at": "LAMP:L"          |"at": "LAMP"            |expectation e2 names LAMP, which is no contact
          ["S1", "X1:1"]          |["S1", "X1:4"]          |expectation e3 names 4, but no cavity of X1 is called that
          ["S1", "X1:1"]          |["S3", "X1:1"]          |expectation e3 names S3, but no connector, device or splice is called that
          "fuse": "FB.f1"         |"fuse": "FB.f3"         |expectation e4 names FB.f3, but no fuse element is called that
          [["W1"], ["W2"]]        |[["W1"], ["W3"]]        |expectation e5 names W3, but no wire is called that
          [["feed"], ["lamp"]]    |[["feed"], ["lump"]]    |expectation e6 names lump, but no circuit is called that
          "loom": "rear"          |"loom": "read"          |expectation e7 names read, but no loom is called that
          """)
  void oneSlipIsOneFinding(String right, String slip, String message) {
    String find = right.strip().replace("\\n", "\n");
    String json = WHOLE.replaceFirst(Pattern.quote(find), quoted(slip));
    assertThat(json).isNotEqualTo(WHOLE);
    Judged judged = judged(json);
    assertThat(judged.messages()).first().isEqualTo(message);
    assertThat(judged.messages().subList(1, judged.messages().size()))
        .as("what else follows from a pin or name that is gone")
        .hasSizeLessThan(2);
    assertThat(judged.findings().get(0).at().get(0).pointer()).isNotEmpty();
  }

  private static String quoted(String slip) {
    return Matcher.quoteReplacement(slip.strip().replace("\\n", "\n"));
  }

  @Test
  void oneMissingThingIsOneFindingThatListsAllWhoNameIt() {
    Judged judged =
        judged(
            """
            {"format": 1, "sketch": true,
             "parts": {"wires": {"w1.0": {"areaMm2": 1, "maxC": 100}}},
             "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w1.5"},
                       "W2": {"from": "A:2", "to": "B:2", "part": "w1.5"},
                       "W3": {"from": "A:3", "to": "B:3", "part": "w1.5"},
                       "W4": {"from": "A:4", "to": "B:4", "part": "w1.5"},
                       "W5": {"from": "A:5", "to": "B:5", "part": "w1.0"}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "no wire part is called w1.5, but wire W1, wire W2, wire W3 and 1 more name it");
    Finding finding = judged.findings().get(0);
    assertThat(finding.remedy())
        .isEqualTo(
            "did you mean w1.0? if not, define it under \"parts\", \"wires\", or correct the name");
    assertThat(finding.details()).containsExactly("wires/W1", "wires/W2", "wires/W3", "wires/W4");
    assertThat(finding.at()).hasSize(4);
    assertThat(judged.coverage().judged()).isEqualTo(5);
  }

  @Test
  void idOfAnotherKindIsSaidToBeOne() {
    Judged judged =
        judged(
            """
            {"format": 1, "sketch": true,
             "wires": {"W1": {"from": "A:1", "to": "W2"}, "W2": {"from": "A:2", "to": "B:2"}}}
            """);
    assertThat(judged.messages())
        .containsExactly("wire W1 names W2, but no connector, device or splice is called that");
    assertThat(judged.findings().get(0).remedy()).startsWith("W2 is a wire; ");
  }

  @Test
  void inASketchWhatWiresNameIsThereAndTheRestIsNot() {
    Judged judged =
        judged(
            """
            {"format": 1, "sketch": true,
             "devices": {"ENG": {"boltedTo": {"case": "BODY:floor"}}, "BODY": {}},
             "connectors": {"X1": {"mates": "X2"}, "X3": {"mates": "X4"}},
             "wires": {"W1": {"from": "X1:1", "to": "S1"}, "W2": {"from": "X2:1", "to": "S1"}},
             "waivers": {"w": {"rule": "cavity-doubled", "at": "connectors/X2:1",
                               "reason": "ten letters"}}}
            """);
    assertThat(judged.messages())
        .containsExactly("connector X3 names X4, but no connector or device is called that");
  }

  @Test
  void deviceOfAnUnknownTypeIsOneFindingAndNotMany() {
    Judged judged =
        judged(
            """
            {"format": 1, "sketch": true,
             "devices": {"ECU": {"type": "none"}, "BAT": {"boltedTo": {"-": "ECU:x"}}},
             "fitted": {"ECU.f1": "none-such"},
             "connectors": {"X1": {"mates": "ECU.A"}},
             "states": {"run": {"set": {"ECU": "run", "ECU.pump": "on"}, "on": ["ECU"],
                                "running": ["ECU.gen"], "volts": {"ECU": 5}}},
             "waivers": {"w": {"rule": "cavity-doubled", "at": "devices/ECU.f1",
                               "reason": "ten letters"}},
             "expectations": {"e": {"that": "fed", "at": "ECU.pump", "in": "run", "reason": "r"}},
             "wires": {"W1": {"from": "ECU:1", "to": "X1:1"}}}
            """);
    assertThat(judged.messages())
        .containsExactly(
            "device ECU names none, but no device type is called that",
            "the fuse fitted in ECU.f1 names none-such, but no fuse part is called that");
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("the type of a device that it names is not known");
  }

  @Test
  void whatAnUnreadFileMayDefineIsNotJudged() {
    Judged judged =
        judged(
            Map.of(
                Judged.ROOT,
                """
                {"format": 1, "uses": ["parts.json"],
                 "devices": {"SW": {"positions": ["off", "low"]}},
                 "states": {"s": {"set": {"SW": "high"}}},
                 "connectors": {"X1": {"housing": "h2"}}}
                """,
                "parts.json",
                "{"));
    assertThat(judged.messages())
        .containsExactly("state s names high, but no position of SW is called that");
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("a file of this harness could not be read");
  }

  @Test
  void whatIsDefinedButNotWrittenRightlyIsNotCalledMissing() {
    Judged judged =
        judged(
            """
            {"format": 1,
             "parts": {"wires": {"w1": 5, "W2": {"areaMm2": 1, "maxC": 100},
                                 "w2": {"areaMm2": 2, "maxC": 100}}},
             "conectors": {"X1": {}},
             "devices": {"FB": {"elements": {"f1": {"kind": "fus", "a": "1", "b": "2"}}}},
             "fitted": {"FB.f1": "mini"},
             "wires": {"W1": {"from": "X1:1", "to": "X1:2", "part": "w1"},
                       "W3": {"from": "X1:3", "to": "X1:4", "part": "w2"}}}
            """);
    assertThat(judged.messages())
        .containsExactly("the fuse fitted in FB.f1 names mini, but no fuse part is called that");
    assertThat(judged.coverage().missing())
        .containsOnlyKeys("what it names is not written rightly");
  }

  @Test
  void settingsAreHeldAgainstTheirRange() {
    String name = "days";
    for (String value : new String[] {"-1", "0", "365", "366", "\"14\"", "true"}) {
      String json =
          "{\"format\": 1, \"limits\": {\"%s\": {\"%s\": %s}}}"
              .formatted(new SpliceUnderfilled().info().id(), name, value);
      KnownRules known =
          new KnownRules(
              Map.of(
                  new SpliceUnderfilled().info().id(),
                  Map.of(name, new KnownRules.Range(0, 365, "d"))));
      Facts facts = Facts.of(Judged.read(Map.of(Judged.ROOT, json)), Judged.TODAY, known);
      assertThat(Judged.of(new ReferenceUnresolved(), facts).findings())
          .as(value)
          .hasSize(value.equals("0") || value.equals("365") ? 0 : 1);
    }
  }

  @Test
  void namesOfRulesAreNotJudgedWhereNoneAreKnown() {
    Judged judged =
        Judged.of(
            new ReferenceUnresolved(),
            "{\"format\": 1, \"limits\": {\"no-such-rule\": {\"level\": \"off\"}}}");
    assertThat(judged.messages()).isEmpty();
    assertThat(judged.coverage().missing()).containsOnlyKeys("which rules there are is not known");
  }

  @Test
  void deviceWithSeveralSourcesHasNoVoltsOfItsOwn() {
    Judged judged =
        judged(
            """
            {"format": 1,
             "devices": {"PACK": {"elements": {
               "a": {"kind": "source", "plus": "a+", "minus": "a-"},
               "b": {"kind": "source", "plus": "b+", "minus": "b-"}}}},
             "states": {"s": {"volts": {"PACK": 12}}, "t": {"volts": {"PACK.a": 12}}}}
            """);
    assertThat(judged.messages())
        .containsExactly("state s gives the volts of PACK, which has 2 sources");
    assertThat(judged.findings().get(0).remedy()).isEqualTo("name one: PACK.a, PACK.b");
  }
}
