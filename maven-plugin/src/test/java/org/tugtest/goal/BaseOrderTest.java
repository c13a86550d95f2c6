package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tugtest.base.BaseWord;

class BaseOrderTest {
  private static final BaseWord HEAD = new BaseWord.Revision("HEAD");

  private static BaseOrder order(boolean staged, @Nullable String head, @Nullable String base) {
    return new BaseOrder(staged, head, base, false, false);
  }

  @Test
  void aCheckIsHeldAgainstNothingUnlessItIsAskedFor() {
    assertThat(order(false, null, null).ofCheck()).isInstanceOf(BaseWord.None.class);
    assertThat(order(false, null, " ").ofCheck()).isInstanceOf(BaseWord.None.class);
    assertThat(order(false, null, "main").ofCheck()).isEqualTo(new BaseWord.Revision("main"));
  }

  @Test
  void whereAgesMatterTheBaseIsFoundOut() {
    for (boolean ages : new boolean[] {true, false}) {
      BaseOrder files = new BaseOrder(false, null, null, ages, !ages);
      assertThat(files.ofCheck()).isEqualTo(new BaseWord.Auto(null));
      BaseOrder staged = new BaseOrder(true, null, null, ages, !ages);
      assertThat(staged.ofCheck()).isEqualTo(HEAD);
      assertThat(staged.followsHead(staged.ofCheck())).isTrue();
      assertThat(new BaseOrder(true, null, "v1", ages, !ages).ofCheck())
          .isEqualTo(new BaseWord.Revision("v1"));
    }
  }

  @Test
  void aComparisonIsHeldAgainstTheCommitBefore() {
    assertThat(order(false, null, null).ofComparison()).isEqualTo(HEAD);
    assertThat(order(false, "  ", null).ofComparison()).isEqualTo(HEAD);
    assertThat(order(false, " v2 ", null).ofComparison()).isEqualTo(new BaseWord.Revision("v2~1"));
    assertThat(order(false, "v2", "v1").ofComparison()).isEqualTo(new BaseWord.Revision("v1"));
  }

  @Test
  void onlyTheNextCommitFollowsHead() {
    assertThat(order(false, null, null).followsHead(HEAD)).isFalse();
    assertThat(order(true, null, null).followsHead(new BaseWord.Revision("main"))).isFalse();
  }

  @Test
  void theSidesOfAMergeBelongTogether() throws MojoExecutionException {
    assertThat(Parents.of(null, " ", null)).isNull();
    assertThat(Parents.of(" a ", "b", " ")).isEqualTo(new Parents("a", "b"));
    for (String[] half : new String[][] {{"a", null}, {" ", "b"}}) {
      assertThatExceptionOfType(MojoExecutionException.class)
          .isThrownBy(() -> Parents.of(half[0], half[1], null))
          .withMessageContaining("belong together");
    }
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> Parents.of("a", "b", "main"))
        .withMessageStartingWith("tugtest.base has no place beside");
  }
}
