package org.tugtest.write;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;

/**
 * Reads the ends of the wires of one list, each in the light of all: {@code ECU-4} is pin 4 of ECU
 * when the list has {@code ECU:1}, or {@code ECU-1}, {@code ECU-2} and so on once each; alone it is
 * a name.
 */
final class EndCells {
  private final Set<String> owners = new HashSet<>();
  private final Set<String> plusOwners = new HashSet<>();
  private final Map<String, Map<String, Integer>> weak = new HashMap<>();
  private final LegalNames names;

  /**
   * One end as the list gives it.
   *
   * @param text the cell of the end
   * @param pin the cell of its pin; empty without one
   */
  record Cell(String text, String pin) {}

  /**
   * What an end says.
   *
   * @param owner connector, device or splice; null when it is unclear or not given
   * @param pin cavity or pin; null without one
   * @param about the cell, or what several cells have in common
   * @param message what is not plain about it, a sentence; null when all is
   * @param done what was made of it; null when all is plain
   */
  record Read(
      @Nullable String owner,
      @Nullable String pin,
      String about,
      @Nullable String message,
      @Nullable String done) {

    /** As the format writes it; null without an owner. */
    @Nullable String reference() {
      return owner == null || pin == null ? owner : owner + ":" + pin;
    }
  }

  /** A reader for these ends. */
  EndCells(Collection<Cell> cells, LegalNames names) {
    this.names = names;
    for (Cell cell : cells) {
      EndForm form = EndForm.of(cell.text());
      if (!cell.pin().isEmpty()) {
        boolean both = form.kind() == EndForm.Kind.PIN && cell.text().indexOf(':') >= 0;
        owners.add(LegalNames.folded(both ? form.owner() : form.text()));
      } else if (form.kind() == EndForm.Kind.PIN) {
        owners.add(LegalNames.folded(form.owner()));
        if ("+".equals(form.pin())) {
          plusOwners.add(LegalNames.folded(form.owner()));
        }
      } else if (form.kind() == EndForm.Kind.MAYBE_PIN && form.pin() != null) {
        weak.computeIfAbsent(LegalNames.folded(form.owner()), first -> new HashMap<>())
            .merge(form.pin(), 1, Integer::sum);
      }
    }
  }

  /** Reads one end. */
  Read read(Cell cell) {
    EndForm form = EndForm.of(cell.text());
    if (!cell.pin().isEmpty()) {
      return withPin(form, cell);
    }
    return switch (form.kind()) {
      case NONE -> new Read(null, null, "", null, null);
      case PLACEHOLDER ->
          unclear(form, "stands for no end", "The end was left out; the cell is kept as a note.");
      case UNCLEAR ->
          unclear(
              form,
              "can be read in more than one way, or is no name",
              "The end was left out; the cell is kept as a note.");
      case PIN -> pinned(form);
      case MAYBE_PIN -> maybe(form);
      case NAME -> named(form);
    };
  }

  private Read withPin(EndForm form, Cell cell) {
    String pin = EndForm.barePin(cell.pin());
    if (!LegalNames.isPin(pin)) {
      return new Read(
          null,
          null,
          cell.pin(),
          "Pin " + Quoted.text(cell.pin()) + " is no name of a pin.",
          "The end was left out; both cells are kept as a note.");
    }
    if (form.kind() == EndForm.Kind.PIN && cell.text().indexOf(':') >= 0) {
      return pin.equals(form.pin())
          ? pinned(form)
          : unclear(
              form,
              "names another pin than its pin column, " + Quoted.text(cell.pin()),
              "The end was left out; both cells are kept as a note.");
    }
    String legal = LegalNames.legal(form.text());
    if (legal.isEmpty() || form.kind() == EndForm.Kind.PLACEHOLDER) {
      return unclear(
          form,
          "names nothing for pin " + Quoted.text(cell.pin()),
          "The end was left out; both cells are kept as a note.");
    }
    return spelt(form.text(), pin);
  }

  private Read maybe(EndForm form) {
    String owner = LegalNames.folded(form.owner());
    String pin = Objects.requireNonNull(form.pin());
    if (owners.contains(LegalNames.folded(form.text()))) {
      return named(form);
    }
    boolean sign = pin.equals("-");
    if (owners.contains(owner) && (!sign || plusOwners.contains(owner))) {
      return pinned(form);
    }
    if (form.designator()) {
      return pinned(form);
    }
    Map<String, Integer> pins = weak.getOrDefault(owner, Map.of());
    long once = pins.values().stream().filter(count -> count == 1).count();
    if (!sign && pins.size() > 1 && 2 * once > pins.size()) {
      String id = names.idOf(form.owner());
      return new Read(
          id,
          pin,
          form.owner(),
          "Cells such as " + Quoted.text(form.text()) + " can be pins or names.",
          "They were read as pins of " + id + ", for most of them stand in the list once.");
    }
    if (sign) {
      return unclear(
          form,
          "can be a minus pin or a name",
          "The end was left out; the cell is kept as a note. Write " + form.owner() + ":- for it.");
    }
    Read name = named(form);
    String id = name.owner();
    return new Read(
        id,
        null,
        form.text(),
        Quoted.text(form.text()) + " can be a name or a pin of " + form.owner() + ".",
        "It was read as the splice "
            + id
            + "; write "
            + form.owner()
            + ":"
            + pin
            + " for the pin.");
  }

  private Read named(EndForm form) {
    if (owners.contains(LegalNames.folded(form.text()))) {
      Read read = spelt(form.text(), null);
      return new Read(
          read.owner(),
          null,
          form.text(),
          Quoted.text(form.text()) + " has pins elsewhere in the list, but none here.",
          "The end was kept without a pin; give it one.");
    }
    Read read = spelt(form.text(), null);
    if (read.owner() == null || read.message() != null) {
      return read;
    }
    return new Read(
        read.owner(),
        null,
        form.text(),
        Quoted.text(form.text()) + " has no pin.",
        "It was taken as the splice " + read.owner() + ".");
  }

  private Read pinned(EndForm form) {
    return spelt(form.owner(), form.pin());
  }

  /** An end with the id of its owner, said where the id is not what the cell says. */
  private Read spelt(String name, @Nullable String pin) {
    String id = names.idOf(name);
    if (id.isEmpty()) {
      return new Read(
          null,
          null,
          name,
          Quoted.text(name) + " has no letter or digit that an id may hold.",
          "The end was left out; the cell is kept as a note.");
    }
    if (!id.equals(name)) {
      String kind = pin == null ? "the splice " : "";
      return new Read(
          id,
          pin,
          name,
          Quoted.text(name) + " is no legal id, or is spelt otherwise elsewhere.",
          "It was written as " + kind + id + ".");
    }
    return new Read(id, pin, name, null, null);
  }

  private static Read unclear(EndForm form, String why, String done) {
    return new Read(null, null, form.text(), Quoted.text(form.text()) + " " + why + ".", done);
  }
}
