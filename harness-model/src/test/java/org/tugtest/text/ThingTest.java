package org.tugtest.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          wires W1 colour              | wires/W1          | colour of wires/W1
          wires W1                     | wires/W1          | wires/W1
          wires                        | ''                | wires of this file
          wires W1 via 2               | wires/W1          | item 3 of via of wires/W1
          layout segments s1 lengthMm  | segments/s1       | lengthMm of segments/s1
          layout nodes                 | ''                | nodes of layout of this file
          parts wires w1.0 maxC        | parts/wires/w1.0  | maxC of parts/wires/w1.0
          parts fuses f times 0 leastS | parts/fuses/f     | leastS of item 1 of times of parts/fuses/f
          devices ECU elements fan a   | devices/ECU.fan   | a of devices/ECU.fan
          devices ECU pins 30 side     | devices/ECU:30    | side of devices/ECU:30
          devices ECU elements         | devices/ECU       | elements of devices/ECU
          connectors X1 cavities 3     | connectors/X1:3   | connectors/X1:3
          loom title                   | ''                | title of loom of this file
          title                        | ''                | title of this file
          """)
  void namesTheThingAndTheValue(String names, String thing, String words) {
    Thing of = Thing.of(List.of(names.split(" ", -1)));
    assertThat(of.name()).isEqualTo(thing);
    assertThat(of.inWords()).isEqualTo(words);
  }
}
