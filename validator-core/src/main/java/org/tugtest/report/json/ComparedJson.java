package org.tugtest.report.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.bench.retest.Retest;
import org.tugtest.bench.rework.Rework;
import org.tugtest.bench.rework.Step;
import org.tugtest.bench.ringout.Apart;
import org.tugtest.bench.ringout.Probe;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.cause.Meeting;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.circuit.Circuits;
import org.tugtest.compare.circuit.ElementChange;
import org.tugtest.compare.circuit.NetChange;
import org.tugtest.compare.consequence.Consequences;
import org.tugtest.compare.consequence.Moved;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.JsonStream;
import org.tugtest.text.Place;

/** What an entry of {@code harnesses} has more in {@code compare.json}. */
final class ComparedJson {
  private final @Nullable Baseline baseline;
  private final JsonStream json;

  ComparedJson(HarnessReport harness, JsonStream json) {
    this.baseline = harness.baseline();
    this.json = json;
  }

  void write() {
    if (baseline == null || !baseline.present()) {
      json.object("base")
          .text("label", baseline == null ? null : baseline.label())
          .flag("present", Boolean.FALSE)
          .end()
          .text("circuits", null);
      for (String empty :
          List.of("changes", "resolved", "causes", "meetings", "consequences", "rework")) {
        json.texts(empty, List.of());
      }
      for (String empty : List.of("reworkCautions", "reworkOpen", "reworkLeft")) {
        json.texts(empty, List.of());
      }
      json.text("ringOut", null);
      return;
    }
    Comparison comparison = baseline.comparison();
    json.object("base").text("label", baseline.label()).flag("present", Boolean.TRUE).end();
    circuits(comparison.circuits(), baseline.announced());
    json.array("changes");
    comparison.changes().forEach(this::change);
    json.end();
    json.array("resolved");
    comparison.findings().resolved().forEach(this::resolved);
    json.end();
    causes(comparison);
    json.array("consequences");
    Consequences.of(comparison).forEach(this::consequences);
    json.end();
    rework(baseline.work().rework());
    json.texts("reworkLeft", baseline.work().left());
    ringOut(baseline.work().retest());
  }

  private void circuits(Circuits circuits, Announced announced) {
    json.object("circuits").flag("same", circuits.same()).text("sentence", circuits.sentence());
    json.array("nets");
    for (NetChange net : circuits.nets()) {
      json.object().text("kind", net.kind().word());
      nets("before", net.before());
      nets("after", net.after());
      json.texts("pins", net.pins())
          .texts("wires", net.wires())
          .texts("contacts", net.contacts())
          .text("sentence", net.sentence())
          .flag("announced", !announced.undeclaredNets().contains(net))
          .end();
    }
    json.end().array("elements");
    for (ElementChange element : circuits.elements()) {
      json.object()
          .text("element", element.element().place())
          .text("before", element.before())
          .text("after", element.after())
          .texts("pins", element.pins())
          .text("sentence", element.sentence())
          .flag("announced", !announced.undeclaredElements().contains(element))
          .end();
    }
    json.end().array("notMade");
    for (Announced.NotMade one : announced.notMade()) {
      json.object().text("id", one.id()).text("net", one.net()).text("why", one.why()).end();
    }
    json.end().end();
  }

  private void nets(String name, List<List<String>> nets) {
    json.array(name);
    for (List<String> pins : nets) {
      json.array();
      pins.forEach(json::text);
      json.end();
    }
    json.end();
  }

  private void change(Change change) {
    json.object()
        .text("kind", change.kind().word())
        .text("was", place(change.was()))
        .text("is", place(change.is()))
        .text("field", change.field().isEmpty() ? null : change.field())
        .text("before", change.before())
        .text("after", change.after())
        .text("sentence", change.sentence())
        .text("group", change.group().sort().word())
        .text("under", change.group().id().isEmpty() ? null : change.group().id());
    at("atBefore", change.placeBefore());
    at("atAfter", change.placeAfter());
    json.end();
  }

  private static @Nullable String place(@Nullable Subject subject) {
    return subject == null ? null : subject.place();
  }

  private void at(String name, @Nullable Place place) {
    if (place == null) {
      json.text(name, null);
    } else {
      HarnessJson.place(json.object(name), place).end();
    }
  }

  private void resolved(Finding finding) {
    json.object()
        .text("rule", finding.rule())
        .text("level", finding.level().word())
        .texts("subjects", finding.subjects().stream().map(Subject::place).toList())
        .text("message", finding.message())
        .text("identity", finding.identity())
        .end();
  }

  private void causes(Comparison comparison) {
    Baseline base = Objects.requireNonNull(baseline);
    json.array("causes");
    for (Finding finding : comparison.findings().fresh()) {
      base.causeOf(finding)
          .ifPresent(
              cause ->
                  json.object()
                      .text("identity", finding.identity())
                      .texts("changes", sentences(cause.changes()))
                      .flag("least", cause.least())
                      .end());
    }
    json.end().array("meetings");
    for (Meeting meeting : base.meetings()) {
      json.object()
          .text("identity", meeting.finding().identity())
          .texts("ours", sentences(meeting.ours()))
          .texts("theirs", sentences(meeting.theirs()))
          .text("where", meeting.where().isEmpty() ? null : meeting.where())
          .text("sentence", meeting.sentence())
          .end();
    }
    json.end();
  }

  private static List<String> sentences(List<Change> changes) {
    return changes.stream().map(Change::sentence).toList();
  }

  private void consequences(Consequences sort) {
    json.object().text("title", sort.title()).array("moved");
    for (Moved moved : sort.moved()) {
      json.object()
          .text("what", moved.what())
          .text("subject", place(moved.subject()))
          .number("before", finite(moved.before()))
          .number("after", finite(moved.after()))
          .text("unit", moved.unit())
          .text("shown", moved.shown(moved.before()) + " to " + moved.shown(moved.after()))
          .text("note", moved.note().isEmpty() ? null : moved.note())
          .end();
    }
    json.end().end();
  }

  private static @Nullable Double finite(@Nullable Double value) {
    return value == null || value.isInfinite() ? null : value;
  }

  private void rework(Rework rework) {
    json.array("rework");
    for (Step step : rework.steps()) {
      json.object()
          .text("kind", step.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
          .text("at", step.at())
          .texts("ends", step.ends().stream().map(end -> end.piece().name()).distinct().toList())
          .text("from", step.from() == null ? null : step.from().text())
          .text("to", step.to() == null ? null : step.to().text())
          .text("part", step.part())
          .text("text", step.text())
          .texts("remarks", step.remarks())
          .end();
    }
    json.end();
    List<String> open = new ArrayList<>(rework.besides());
    open.addAll(rework.open());
    json.texts("reworkCautions", rework.cautions()).texts("reworkOpen", open);
  }

  private void ringOut(Retest retest) {
    json.object("ringOut").array("looms");
    for (Retest.OfLoom loom : retest.looms()) {
      json.object().text("loom", loom.scope().loom()).text("title", loom.scope().title());
      json.array("joined");
      for (Probe probe : loom.joined()) {
        json.object()
            .text("from", probe.from().text())
            .text("to", probe.to().text())
            .texts("wires", probe.wires())
            .number("ohms", probe.ohms())
            .number("limitOhms", probe.limitOhms())
            .text("remark", probe.remark().isEmpty() ? null : probe.remark())
            .end();
      }
      json.end().array("apart");
      for (Apart apart : loom.apart()) {
        json.object()
            .text("from", apart.from().text())
            .text("to", apart.to().text())
            .text("why", apart.why())
            .end();
      }
      json.end().array("blind");
      loom.blind()
          .forEach(
              spot ->
                  json.object().text("what", spot.what().place()).text("why", spot.why()).end());
      json.end().end();
    }
    json.end().array("functions");
    retest
        .functions()
        .forEach(
            function ->
                json.object()
                    .text("element", function.element())
                    .texts("why", function.why())
                    .texts("states", function.states())
                    .end());
    json.end().end();
  }
}
