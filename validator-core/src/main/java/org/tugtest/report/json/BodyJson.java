package org.tugtest.report.json;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.report.JsonStream;
import org.tugtest.route.BendNeed;
import org.tugtest.route.Bundle;
import org.tugtest.route.CoverLayers;
import org.tugtest.route.Totals;

/** The segments and totals of a harness. */
final class BodyJson {
  private static final double TENTH = 10;
  private static final double THOUSANDTH = 1000;

  private final Facts facts;
  private final JsonStream json;

  BodyJson(Facts facts, JsonStream json) {
    this.facts = facts;
    this.json = json;
  }

  void write() {
    json.object("segments");
    facts.harness().layout().segments().values().forEach(this::segment);
    json.end();
    totals();
  }

  /** A length in mm or a mass in g to a tenth. */
  static Double tenths(double figure) {
    return Math.round(figure * TENTH) / TENTH;
  }

  /** A share or a length in m to a thousandth. */
  private static Double thousandths(double figure) {
    return Math.round(figure * THOUSANDTH) / THOUSANDTH;
  }

  private void segment(Layout.Segment segment) {
    Bundle thickest =
        facts
            .bundles()
            .thickest(segment.id())
            .filter(bundle -> !bundle.strands().isEmpty() && bundle.unsized().isEmpty())
            .orElse(null);
    boolean known =
        thickest != null
            && facts.bundles().of(segment.id()).stream().allMatch(b -> b.unsized().isEmpty());
    json.object(segment.id());
    if (thickest == null || !known) {
      for (String figure : new String[] {"leastMm", "expectedMm", "looseMm", "fill", "bendMm"}) {
        json.number(figure, null);
      }
    } else {
      Double bend =
          BendNeed.of(
                  facts.harness(),
                  facts.bundles().of(segment.id()),
                  segment.coverings(),
                  BendNeed.OF_WIRE,
                  BendNeed.OF_BUNDLE)
              .map(BendNeed::mm)
              .orElse(null);
      json.number("leastMm", tenths(thickest.leastMm()))
          .number("expectedMm", tenths(thickest.expectedMm()))
          .number("looseMm", tenths(thickest.looseMm()))
          .number("fill", fill(segment, thickest))
          .number("bendMm", bend == null ? null : tenths(bend));
    }
    json.end();
  }

  /** The greatest share that the expected circle fills of a covering; null without an inner one. */
  private @Nullable Double fill(Layout.Segment segment, Bundle bundle) {
    Double greatest = null;
    for (CoverLayers.Layer layer :
        CoverLayers.of(
                facts.harness().parts().coverings(),
                segment.coverings(),
                bundle.expectedMm(),
                bundle.looseMm())
            .layers()) {
      Double most = layer.mostMm();
      if (most != null && most > 0) {
        double share = layer.insideMm() * layer.insideMm() / (most * most);
        greatest =
            greatest == null ? Double.valueOf(share) : Double.valueOf(Math.max(greatest, share));
      }
    }
    return greatest == null ? null : thousandths(greatest);
  }

  private void totals() {
    Harness content = facts.harness();
    Totals totals = facts.totals();
    json.object("totals")
        .count("looms", content.looms().size())
        .count("devices", content.devices().size())
        .count("connectors", content.connectors().size())
        .count("splices", content.splices().size())
        .count("wires", content.wires().size());
    sum(totals.whole());
    json.object("byLoom");
    for (Map.Entry<String, Totals.Sum> entry : totals.byLoom().entrySet()) {
      if (!entry.getValue().lines().isEmpty() || !entry.getKey().isEmpty()) {
        json.object(entry.getKey());
        sum(entry.getValue());
        json.end();
      }
    }
    json.end();
    json.object("cavities");
    totals
        .cavities()
        .forEach(
            (connector, ways) ->
                json.object(connector)
                    .count("all", ways.all())
                    .count("wired", ways.wired())
                    .count("spare", ways.spare())
                    .end());
    json.end().end();
  }

  private void sum(Totals.Sum sum) {
    json.number("metres", thousandths(sum.metres()))
        .number("grams", tenths(sum.grams()))
        .flag("complete", sum.complete());
    json.texts("lacking", sum.lacking());
    json.array("parts");
    for (Totals.Line line : sum.lines()) {
      json.object()
          .text("kind", line.kind().word())
          .text("part", line.part())
          .count("count", line.count())
          .number("metres", thousandths(line.metres()))
          .number("grams", tenths(line.grams()))
          .end();
    }
    json.end();
  }
}
