package org.tugtest.report.junit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.ReportWriter;
import org.tugtest.report.Sink;
import org.tugtest.report.junit.Case.Result;

/**
 * Writes {@code report.junit.xml}: one case for each rule and root and one for each expectation.
 * Only what blocks is a failure; what was not run, not judged or is waived is skipped; a rule that
 * broke is an error.
 */
public final class JunitReport implements ReportWriter {
  /** The file it writes. */
  public static final String FILE = "report.junit.xml";

  private static final String UTF_8 = StandardCharsets.UTF_8.name();

  @Override
  public String format() {
    return "junit";
  }

  @Override
  public void write(Report report, Sink sink) throws IOException {
    try (OutputStream stream = sink.open(FILE)) {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(stream, UTF_8);
      write(report, Cases.of(report), xml);
      xml.close();
    } catch (XMLStreamException failed) {
      throw new IOException(failed.getMessage(), failed);
    }
  }

  private static void write(Report report, List<Case> cases, XMLStreamWriter xml)
      throws XMLStreamException {
    xml.writeStartDocument(UTF_8, "1.0");
    xml.writeCharacters("\n");
    xml.writeStartElement("testsuite");
    attribute(xml, "version", "3.0.2");
    attribute(xml, "name", "tugtest");
    attribute(xml, "time", "0");
    attribute(xml, "tests", Integer.toString(cases.size()));
    attribute(xml, "errors", count(cases, Result.BROKEN));
    attribute(xml, "skipped", count(cases, Result.SKIPPED));
    attribute(xml, "failures", count(cases, Result.FAILED));
    properties(report, xml);
    for (Case one : cases) {
      testcase(one, xml);
    }
    xml.writeCharacters("\n");
    xml.writeEndElement();
    xml.writeCharacters("\n");
    xml.writeEndDocument();
  }

  private static String count(List<Case> cases, Result result) {
    return Long.toString(cases.stream().filter(one -> one.result() == result).count());
  }

  private static void properties(Report report, XMLStreamWriter xml) throws XMLStreamException {
    xml.writeCharacters("\n  ");
    xml.writeStartElement("properties");
    property(xml, "tugtest.version", report.version());
    property(xml, "tugtest.revision", report.revision().shown());
    property(xml, "tugtest.today", report.revision().today().toString());
    property(xml, "tugtest.failOn", report.gate().word());
    xml.writeCharacters("\n  ");
    xml.writeEndElement();
  }

  private static void property(XMLStreamWriter xml, String name, String value)
      throws XMLStreamException {
    xml.writeCharacters("\n    ");
    xml.writeEmptyElement("property");
    attribute(xml, "name", name);
    attribute(xml, "value", value);
  }

  private static void testcase(Case one, XMLStreamWriter xml) throws XMLStreamException {
    xml.writeCharacters("\n  ");
    xml.writeStartElement("testcase");
    attribute(xml, "name", one.name());
    attribute(xml, "classname", one.root());
    attribute(xml, "time", "0");
    switch (one.result()) {
      case PASSED -> {}
      case FAILED -> child(xml, "failure", one, "finding");
      case BROKEN -> child(xml, "error", one, "broken");
      case SKIPPED -> child(xml, "skipped", one, "");
    }
    if (!one.output().isEmpty()) {
      xml.writeCharacters("\n    ");
      xml.writeStartElement("system-out");
      xml.writeCharacters(one.output());
      xml.writeEndElement();
    }
    xml.writeCharacters("\n  ");
    xml.writeEndElement();
  }

  private static void child(XMLStreamWriter xml, String name, Case one, String type)
      throws XMLStreamException {
    xml.writeCharacters("\n    ");
    xml.writeStartElement(name);
    attribute(xml, "message", one.message());
    if (!type.isEmpty()) {
      attribute(xml, "type", type);
    }
    xml.writeCharacters(one.text());
    xml.writeEndElement();
  }

  /** The one place where text goes into an attribute: on one line, in characters of XML 1.0. */
  private static void attribute(XMLStreamWriter xml, String name, String value)
      throws XMLStreamException {
    xml.writeAttribute(name, PrintableText.of(value));
  }
}
