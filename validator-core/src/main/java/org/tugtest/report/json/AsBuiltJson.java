package org.tugtest.report.json;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tugtest.built.Refusal;
import org.tugtest.built.explain.Explanation;
import org.tugtest.built.explain.Suspect;
import org.tugtest.check.CheckedFinding;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.TakenReading;
import org.tugtest.model.Reading;
import org.tugtest.report.AsBuiltReport;
import org.tugtest.report.AsBuiltText;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.JsonStream;
import org.tugtest.report.Report;

/** What {@code compare.json} says of a loom as it was built. */
record AsBuiltJson(Report report, HarnessReport harness, JsonStream json) {
  void write() {
    AsBuiltReport built = harness.built();
    if (built == null) {
      json.text("asBuilt", null);
      return;
    }
    json.object("asBuilt").array("deviations");
    built.deviations().forEach(this::deviation);
    json.end().array("readings");
    built.readings().forEach(this::reading);
    json.end().array("explanations");
    built.explanations().forEach(this::explanation);
    json.end().array("refused");
    for (Refusal refusal : built.refused()) {
      json.object().text("message", refusal.message()).text("remedy", refusal.remedy());
      HarnessJson.place(json.object("at"), refusal.at()).end();
      json.end();
    }
    json.end().end();
  }

  private void deviation(AsBuiltReport.Judged<Deviation> judged) {
    Deviation deviation = judged.told();
    json.object()
        .text("kind", deviation.kind().name().toLowerCase(Locale.ROOT))
        .text("subject", deviation.subject().place())
        .text("what", deviation.what())
        .text("reason", deviation.reason().isEmpty() ? null : deviation.reason())
        .flag("accepted", deviation.accepted())
        .text("until", deviation.until() == null ? null : deviation.until().toString())
        .text("safe", deviation.safe() == null ? null : deviation.safe().word())
        .text("told", deviation.told());
    found(judged.found());
    json.text("standing", AsBuiltText.standing(report, harness, judged));
    HarnessJson.place(json.object("at"), deviation.at()).end();
    json.end();
  }

  private void reading(AsBuiltReport.Judged<TakenReading> judged) {
    Reading reading = judged.told().reading();
    json.object()
        .text("from", judged.told().from().text())
        .text("to", judged.told().to().text())
        .number("ohms", reading.ohms())
        .flag("joined", reading.joined());
    found(judged.found());
    HarnessJson.place(json.object("at"), judged.told().at()).end();
    json.end();
  }

  private void found(@Nullable CheckedFinding found) {
    json.flag("blocks", found != null && report.gate().blocks(harness, found))
        .text("finding", found == null ? null : found.finding().identity());
  }

  private void explanation(Explanation explanation) {
    json.object().array("readings");
    for (TakenReading reading : explanation.readings()) {
      json.object().text("from", reading.from().text()).text("to", reading.to().text()).end();
    }
    json.end().flag("smallest", explanation.smallest()).array("sets");
    for (List<Suspect> set : explanation.sets()) {
      json.array();
      for (Suspect suspect : set) {
        json.object()
            .text("kind", suspect.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .text("what", suspect.what())
            .texts("things", suspect.things())
            .end();
      }
      json.end();
    }
    json.end();
    explanation
        .telling()
        .ifPresentOrElse(
            telling ->
                json.object("telling")
                    .text("from", telling.from().text())
                    .text("to", telling.to().text())
                    .flag("joinedByFirst", telling.joinedByFirst())
                    .end(),
            () -> json.text("telling", null));
    AsBuiltText.Explained words = AsBuiltText.of(report, explanation);
    json.text("sentence", words.head())
        .text("next", words.telling().isEmpty() ? null : words.telling())
        .end();
  }
}
