package org.tugtest.compare.change;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;

/** What became of a device. */
final class DeviceWords {
  private final ChangeList list;
  private final ChangeList.Entry entry;

  DeviceWords(ChangeList list, ChangeList.Entry entry) {
    this.list = list;
    this.entry = entry;
  }

  void say(Device raw, Device translated, Device now) {
    for (FieldDiff diff : FieldDiff.between(raw, translated, now)) {
      switch (diff.head()) {
        case "type" -> type(raw, now, diff);
        case "at" ->
            ConnectorWords.moved(
                list,
                entry,
                "Device ",
                diff.path(),
                ValueText.of(diff.raw()),
                ValueText.of(diff.now()));
        case "boltedTo" -> bolted(diff);
        default -> own(diff);
      }
    }
  }

  private void type(Device raw, Device now, FieldDiff diff) {
    DeviceType was = list.before().harness().typeOf(raw);
    DeviceType is = list.after().harness().typeOf(now);
    if (Objects.equals(was, is)) {
      FieldWords.field(list, ChangeKind.OTHER, entry, diff);
      return;
    }
    list.add(
        ChangeKind.SWAPPED,
        entry,
        diff.path(),
        ValueText.of(diff.raw()),
        ValueText.of(diff.now()),
        "Device "
            + entry.name()
            + " is "
            + typeName(diff.now())
            + " instead of "
            + typeName(diff.raw())
            + ".");
  }

  private static String typeName(@Nullable Object type) {
    return type == null ? "one of a kind" : "a " + type;
  }

  private void bolted(FieldDiff diff) {
    String pin = diff.path().size() < 2 ? "" : ":" + diff.path().get(1);
    list.add(
        ChangeKind.RE_MATED,
        entry,
        diff.path(),
        ValueText.of(diff.raw()),
        ValueText.of(diff.now()),
        entry.name()
            + pin
            + " is bolted to "
            + Objects.requireNonNullElse(ValueText.of(diff.now()), "nothing")
            + " instead of "
            + Objects.requireNonNullElse(ValueText.of(diff.raw()), "nothing")
            + ".");
  }

  private void own(FieldDiff diff) {
    if (diff.inFuse() && FieldWords.ofNumbers(diff)) {
      FieldWords.rating(list, entry, diff);
    } else {
      FieldWords.field(list, ChangeKind.OTHER, entry, diff);
    }
  }
}
