package org.tugtest.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.tugtest.model.Wire;
import org.tugtest.read.ReadHarness;
import org.tugtest.write.WireListResult.Imported;

class UntidyWireListTest {
  @Property(tries = 60, seed = "2026")
  void everyWireOfAnUntidyListIsRead(@ForAll long seed) {
    UntidyWireList list = UntidyWireList.of(seed);

    Imported imported =
        (Imported)
            WireListImport.read(
                "list.csv",
                list.content(),
                new WireListImport.Options("car.harness.json", null, null));
    ReadHarness read = WireListImportTest.readBack(imported);
    List<Wire> wires = List.copyOf(read.harness().wires().values());

    assertThat(read.problems()).isEmpty();
    assertThat(wires.stream().map(wire -> wire.from() + " " + wire.to()))
        .containsExactlyElementsOf(list.ends());
    assertThat(wires).allSatisfy(wire -> assertThat(wire.colour()).isNotNull());
    assertThat(wires)
        .allSatisfy(wire -> assertThat(wire.areaMm2() == null).isEqualTo(wire.awg() != null));
    assertThat(
            wires.stream()
                .filter(wire -> UntidyWireList.doubled().equals(String.valueOf(wire.to()))))
        .hasSize(2);
    assertThat(imported.unclear())
        .allSatisfy(
            unclear -> assertThat(unclear.shown()).containsAnyOf("above the header", "not UTF-8"));
  }

  @Property(tries = 300, seed = "7")
  void noBytesBreakTheImport(@ForAll byte[] bytes, @ForAll long seed) {
    byte[] list = UntidyWireList.of(seed % 5).content();
    for (int i = 0; i < bytes.length; i++) {
      list[Math.floorMod(bytes[i] * 7919 + i * 104_729, list.length)] = bytes[i];
    }

    WireListResult result =
        WireListImport.read(
            "list.csv", list, new WireListImport.Options("car.harness.json", null, null));

    if (result instanceof Imported imported) {
      assertThat(WireListImportTest.readBack(imported).problems()).isEmpty();
      assertThat(imported.unclear()).allSatisfy(u -> assertThat(u.row()).isBetween(0, 500));
    } else {
      assertThat(((WireListResult.Refused) result).problems()).isNotEmpty();
    }
  }
}
