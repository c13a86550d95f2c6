package org.tugtest.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WireTest {
  private static final Wire WIRE =
      new Wire(
          "W1",
          "nose",
          Ref.parse("R1:1"),
          Ref.parse("LAMP:2"),
          "w1.0",
          1.0,
          "18",
          "RD",
          "RD/WH",
          "lamp",
          List.of("a", "b", "c"),
          true,
          100.0,
          101.0,
          "t1",
          "t2",
          "W1 lamp",
          Evidence.GUESS,
          Wire.Decision.KEEP,
          "new");

  @Test
  void otherEndsAreAllThatChanges() {
    Wire moved = WIRE.between(Ref.parse("R2:3"), null);
    assertThat(moved.from()).isEqualTo(Ref.parse("R2:3"));
    assertThat(moved.to()).isNull();
    assertThat(moved.between(WIRE.from(), WIRE.to())).isEqualTo(WIRE);
  }

  @Test
  void aPartSaysTheSize() {
    Wire thicker = WIRE.ofPart("w2.5");
    assertThat(thicker.part()).isEqualTo("w2.5");
    assertThat(thicker.areaMm2()).isNull();
    assertThat(thicker.awg()).isNull();
    assertThat(thicker)
        .usingRecursiveComparison()
        .ignoringFields("part", "areaMm2", "awg")
        .isEqualTo(WIRE);
  }

  @Test
  void turnedItBeginsWhereItEnded() {
    Wire turned = WIRE.turned();
    assertThat(turned.from()).isEqualTo(WIRE.to());
    assertThat(turned.toTerminal()).isEqualTo("t1");
    assertThat(turned.via()).containsExactly("c", "b", "a");
    assertThat(turned.turned()).isEqualTo(WIRE);
  }
}
