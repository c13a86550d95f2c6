package org.tugtest.report.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;
import static org.tugtest.report.Reports.waived;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.tugtest.check.CheckResult;
import org.tugtest.expect.Verdict;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.report.Gate;
import org.tugtest.report.Golden;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;
import org.tugtest.report.Schemas;
import org.tugtest.report.Written;
import org.tugtest.rule.Coverage;
import org.tugtest.text.Place;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class JunitReportTest {
  private static final Coverage TWO_OF_TWO = new Coverage("made-up", "wires", 2, Map.of());
  private static final Coverage NONE_OF_ONE =
      new Coverage("made-up", "wires", 0, Map.of("no area", List.of(Subject.wire("W1"))));

  @Test
  void theSample() {
    Golden.holds("sample.report.junit.xml", written(Sample.report()));
  }

  @Test
  void reportsFitTheSchemaOfSurefire() throws Exception {
    for (Report report : List.of(Sample.report(), Sample.broken(), Reports.of())) {
      validate(written(report));
    }
    String wrong =
        written(Sample.report()).replace("<skipped", "<skip").replace("</skipped", "</skip");
    assertThatThrownBy(() -> validate(wrong)).isInstanceOf(SAXException.class);
  }

  @Test
  void whatBlocksFails() throws Exception {
    Report report =
        Reports.of(
            root(
                "car.harness.json",
                List.of(TWO_OF_TWO),
                standing(finding(Level.ERROR, "W1", 1, null)),
                standing(finding(Level.ERROR, "W2", 2, null)),
                standing(finding(Level.NOTE, "W3", 3, null))));
    assertThat(ends(report))
        .containsExactly("made-up failure 2 findings; the first: wire W1 is bad");
    Element suite = parsed(report).getDocumentElement();
    assertThat(suite.getAttribute("tests")).isEqualTo("1");
    assertThat(suite.getAttribute("failures")).isEqualTo("1");
    assertThat(suite.getElementsByTagName("failure").item(0).getTextContent())
        .isEqualTo(
            """
            src/main/harness/car.harness.json:1:5: error made-up wire W1 is bad
                mend W1
            src/main/harness/car.harness.json:2:5: error made-up wire W2 is bad
                mend W2
            """);
    assertThat(suite.getElementsByTagName("system-out").item(0).getTextContent())
        .isEqualTo(
            """
            src/main/harness/car.harness.json:3:5: note made-up wire W3 is bad
                mend W3
            judged 2 of 2 wires
            """);
  }

  @Test
  void belowTheGateItPasses() throws Exception {
    HarnessReport root =
        root(
            "car.harness.json",
            List.of(TWO_OF_TWO),
            standing(finding(Level.WARNING, "W1", 1, null)));
    assertThat(ends(Reports.of(root))).containsExactly("made-up passed");
    assertThat(ends(Reports.of(new Gate(Level.WARNING, 0), root)))
        .containsExactly("made-up failure wire W1 is bad");
  }

  @Test
  void whatIsWaivedOrNotJudgedIsSkipped() throws Exception {
    assertThat(
            ends(
                Reports.of(
                    root("a", List.of(TWO_OF_TWO), waived(finding(Level.ERROR, "W1", 1, null))))))
        .containsExactly("made-up skipped waived: 1 finding");
    assertThat(ends(Reports.of(root("a", List.of(NONE_OF_ONE)))))
        .containsExactly("made-up skipped judged 0 of 1 wires");
    assertThat(ends(Reports.of(root("a", List.of(new Coverage("made-up", "wires", 0, Map.of()))))))
        .containsExactly("made-up skipped nothing to judge");
  }

  @Test
  void tooLittleCoverageFails() throws Exception {
    assertThat(ends(Reports.of(new Gate(Level.ERROR, 80), root("a", List.of(NONE_OF_ONE)))))
        .containsExactly("made-up failure judged 0 of 1 wires; the least coverage is 80 %");
  }

  @Test
  void aRuleThatBrokeIsAnError() throws Exception {
    assertThat(ends(Sample.broken()))
        .contains(
            "sample-broken error IllegalStateException: lost <its> way\\u000ain car.harness.json");
  }

  @Test
  void expectationsAreCases() throws Exception {
    HarnessReport bare = root("a");
    List<Place> at = List.of(Place.point("a", 3, 1, ""));
    CheckResult result =
        new CheckResult(
            "a",
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(
                new Verdict("one", Verdict.Answer.HOLDS, "it is fed", at),
                new Verdict("two", Verdict.Answer.FAILS, "PUMP is dead", at),
                new Verdict("three", Verdict.Answer.NOT_JUDGED, "no state", at)));
    assertThat(ends(Reports.of(new HarnessReport(bare.facts(), result))))
        .containsExactly(
            "expectation one passed",
            "expectation two failure PUMP is dead",
            "expectation three skipped not judged: no state");
  }

  @Test
  void withoutAHarnessThereIsAnError() throws Exception {
    assertThat(ends(Reports.of()))
        .containsExactly("harness files error there is no harness to check");
  }

  private static List<String> ends(Report report) throws Exception {
    List<String> ends = new ArrayList<>();
    NodeList cases = parsed(report).getElementsByTagName("testcase");
    for (int i = 0; i < cases.getLength(); i++) {
      Element one = (Element) cases.item(i);
      String end = " passed";
      for (String name : List.of("failure", "error", "skipped")) {
        NodeList child = one.getElementsByTagName(name);
        if (child.getLength() > 0) {
          end = " " + name + " " + ((Element) child.item(0)).getAttribute("message");
        }
      }
      ends.add(one.getAttribute("name") + end);
    }
    return ends;
  }

  private static Document parsed(Report report) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(written(report))));
  }

  private static void validate(String xml) throws Exception {
    SchemaFactory.newDefaultInstance()
        .newSchema(
            new StreamSource(
                new StringReader(
                    Schemas.resource("/formats/junit-surefire-test-report-3.0.2.xsd"))))
        .newValidator()
        .validate(new StreamSource(new StringReader(xml)));
  }

  private static String written(Report report) {
    return Written.by(new JunitReport(), report);
  }
}
