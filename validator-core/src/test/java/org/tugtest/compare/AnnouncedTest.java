package org.tugtest.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.model.AnnouncedChange;
import org.tugtest.model.Ref;

class AnnouncedTest {
  private static final Comparison MOVED =
      Compared.json(
              ComparisonTest.BASE,
              ComparisonTest.BASE
                  .replace("\"to\": \"X1:1\"", "\"to\": \"X1:3\"")
                  .replace("\"FB.f1\": \"mini-10\"", ""))
          .comparison();

  private static AnnouncedChange change(String id, String... nets) {
    return new AnnouncedChange(id, Arrays.stream(nets).map(Ref::parse).toList(), "why", null);
  }

  private static Announced held(AnnouncedChange... changes) {
    return Announced.of(MOVED, List.of(), List.of(changes));
  }

  @Test
  void nothingAnnounced() {
    Announced none = held();
    assertThat(none.complete()).isFalse();
    assertThat(none.undeclaredNets()).hasSize(2);
    assertThat(none.undeclaredElements()).hasSize(1);
  }

  @Test
  void anyPinOrCavityOfTheNetAnnouncesIt() {
    assertThat(held(change("a", "SW:2", "FB.f1")).complete()).isTrue();
    assertThat(held(change("a", "SW:2")).undeclaredElements()).hasSize(1);
    assertThat(held(change("a", "X1:3", "FB:1")).undeclaredElements()).isEmpty();
    assertThat(held(change("a", "X1:3")).undeclaredNets()).isEmpty();
    assertThat(held(change("a", "BAT:+")).undeclaredNets()).hasSize(2);
    assertThat(held(change("a", "SW:1")).undeclaredElements()).isEmpty();
  }

  @Test
  void announcedAndNotMade() {
    Announced held = held(change("a", "S1", "SW:2"), change("b", "NO:1"));
    assertThat(held.notMade())
        .extracting(Announced.NotMade::why)
        .containsExactly(
            "nothing changes in the circuits at S1",
            "NO:1 is no pin, cavity, splice or element of either revision");
  }

  @Test
  void whatTheBaseAnnouncedCoversAndIsNamed() {
    AnnouncedChange old = change("a", "SW:2");
    AnnouncedChange idle = change("b", "S1");
    Announced held = Announced.of(MOVED, List.of(old, idle), List.of(old, idle));
    assertThat(held.undeclaredNets()).isEmpty();
    assertThat(held.old()).containsExactly("a");
    assertThat(held.notMade()).isEmpty();
  }

  @Test
  void withoutABaseEverythingIsNew() {
    Snapshot after = MOVED.after();
    Comparison first = Comparison.of(Snapshot.absent("HEAD", after.facts()), after);
    assertThat(first.findings().fresh()).hasSize(after.result().standing().size());
  }
}
