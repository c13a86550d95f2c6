package org.tugtest.report.html.bundles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.report.html.SampleCar;
import org.tugtest.rule.Judged;

class BundlesRoomTest {
  private static BundlesRoom room(int wires, String covering) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < wires; i++) {
      all.append(i == 0 ? "" : ", ")
          .append("\"W" + i + "\": {\"from\": \"A:" + i + "\", \"to\": \"B:" + i + "\"")
          .append(", \"part\": \"w\", \"colour\": \"RD/WH\"}");
    }
    return BundlesRoom.of(
        Judged.facts(
            Map.of(
                Judged.ROOT,
                """
                {"format": 1, "sketch": true,
                 "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3.0}},
                   "coverings": {"sleeve": {"kind": "braided-sleeve", "innerMinMm": 2, "innerMaxMm": 7.5},
                                 "narrow": {"kind": "heat-shrink", "innerMm": 5}}},
                 "layout": {"segments": {
                   "s1": {"from": "a", "to": "b", "lengthMm": 900, "coverings": [%s]}}},
                 "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
                 "wires": {%s}}
                """
                    .formatted(covering, all))));
  }

  @Test
  void saysHowFullTheCoveringIs() {
    Section section = room(2, "\"sleeve\"").drawn().get(0);
    // Two circles of 3 mm side by side: 6 of 7.5 mm, 64 % of the circle.
    assertThat(section.sizes()).isEqualTo("at least 6.0 mm, expected 6.0 mm, loose 6.0 mm");
    assertThat(section.layers())
        .containsExactly(
            new Section.Layer("sleeve", "6.0 mm in at most 7.5 mm, 64 % filled", false));
    assertThat(section.picture().discs()).hasSize(2);
    assertThat(section.picture().discs().get(0).title())
        .isEqualTo("1: W0, red, white stripe, 3 mm");
  }

  @Test
  void saysThatABundleDoesNotGoIntoItsCovering() {
    Section section = room(2, "\"narrow\", \"none\"").drawn().get(0);
    assertThat(section.layers())
        .containsExactly(
            new Section.Layer("narrow", "6.0 mm in at most 5.0 mm, 144 % filled", true),
            new Section.Layer("none", "is not in the parts", false));
  }

  @Test
  void drawsEveryStrandOfTheSampleInsideTheBundleAndOnNoOther() {
    Facts facts = SampleCar.facts();
    BundlesRoom room = BundlesRoom.of(facts);
    assertThat(room.count()).isEqualTo(facts.bundles().all().size());
    for (Section section : room.drawn()) {
      List<Section.Disc> discs = section.picture().discs();
      assertThat(discs).hasSameSizeAs(section.strands());
      for (int i = 0; i < discs.size(); i++) {
        Section.Disc one = discs.get(i);
        assertThat(Math.hypot(one.x(), one.y()) + one.r())
            .isLessThanOrEqualTo(section.picture().bundle() + 2.5);
        for (Section.Disc other : discs.subList(0, i)) {
          assertThat(Math.hypot(one.x() - other.x(), one.y() - other.y()))
              .as(section.segment() + " " + one.title() + " on " + other.title())
              .isGreaterThanOrEqualTo(one.r() + other.r() - 3.0);
        }
      }
    }
  }

  @Test
  void hasNoSectionsWhereNoWireRuns() {
    assertThat(BundlesRoom.of(Judged.facts(Map.of(Judged.ROOT, "{\"format\": 1}"))).count())
        .isZero();
  }

  @Test
  void staysBoundedWithManyWires() {
    BundlesRoom room = room(3000, "\"sleeve\"");
    assertThat(room.drawn()).isEmpty();
    assertThat(room.others().shown().get(0).wires()).isEqualTo(3000);
  }
}
