package org.tugtest.bench.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;

class BesidesTest {
  private static Facts loom(String fitted, String coverings) {
    return Judged.facts(
        Map.of(
            Judged.ROOT,
            """
            {"format": 1, "sketch": true,
             "parts": {
               "fuses": {"m5": {"ratingA": 5, "style": "blade-mini"},
                         "five": {"ratingA": 5, "style": "blade-mini"},
                         "r5": {"ratingA": 5, "style": "blade-regular"},
                         "m10": {"ratingA": 10, "style": "blade-mini"}},
               "coverings": {"braid": {"kind": "braided-sleeve", "innerMinMm": 4, "innerMaxMm": 9},
                             "tape": {"kind": "tape", "innerMinMm": 1, "innerMaxMm": 40}}},
             "devices": {"FB": {"elements": {
               "f1": {"kind": "fuse", "a": "in", "b": "1"},
               "f2": {"kind": "fuse", "a": "in", "b": "2"}}}},
             "fitted": {%s},
             "layout": {"nodes": {"a": {}, "b": {}}, "segments": {
               "s": {"from": "a", "to": "b", "lengthMm": 100, "coverings": [%s]}}}}
            """
                .formatted(fitted, coverings)));
  }

  private static Rework of(Facts now, Facts target) {
    return Rework.of(now, target, Matching.byId(now, target), Order.BY_CONNECTOR);
  }

  @Test
  void fusesThatComeGoOrAreAnotherAreTold() {
    Facts now = loom("\"FB.f1\": \"m5\"", "");
    assertThat(of(now, now).besides()).isEmpty();
    assertThat(of(now, loom("\"FB.f1\": \"m10\"", "")).besides())
        .containsExactly("FB.f1: take out fuse m5 (5 A), put in fuse m10 (10 A)");
    assertThat(of(now, loom("\"FB.f2\": \"m5\"", "")).besides())
        .containsExactly("FB.f1: take out fuse m5 (5 A)", "FB.f2: put in fuse m5 (5 A)");
    assertThat(of(now, loom("\"FB.f1\": \"r5\"", "")).besides()).hasSize(1);
    assertThat(of(now, loom("\"FB.f1\": \"five\"", "")).besides())
        .as("the same by another name")
        .isEmpty();
  }

  @Test
  void coveringsThatComeOrGoAreTold() {
    Facts now = loom("", "\"braid\"");
    assertThat(of(now, loom("", "")).besides()).containsExactly("segment s: take braid off");
    assertThat(of(now, loom("", "\"tape\", \"braid\"")).besides())
        .containsExactly("segment s: put tape on");
    assertThat(of(now, loom("", "\"tape\"")).besides())
        .containsExactly("segment s: take braid off, put tape on");
    assertThat(of(now, now).besides()).isEmpty();
  }
}
