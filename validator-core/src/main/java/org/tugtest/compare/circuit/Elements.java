package org.tugtest.compare.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.text.NaturalOrder;

/**
 * What lies between the pins of each device: kinds, ends and positions, not ratings. The name of an
 * element is no part of it.
 */
final class Elements {
  private Elements() {}

  /** One element: its name and, in words, all that the verdict holds it by. */
  private record Labelled(String name, String label, List<String> pins) {}

  /** The elements of all devices that differ; devices are the same by their id alone. */
  static List<ElementChange> changed(Harness before, Harness after) {
    List<ElementChange> changes = new ArrayList<>();
    Set<String> devices = new TreeSet<>(NaturalOrder.NATURAL);
    devices.addAll(before.devices().keySet());
    devices.addAll(after.devices().keySet());
    for (String device : devices) {
      Map<String, Labelled> gone = of(before, device);
      Map<String, Labelled> come = of(after, device);
      if (gone.equals(come)) {
        continue;
      }
      cancel(gone, come);
      Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
      names.addAll(gone.keySet());
      names.addAll(come.keySet());
      for (String name : names) {
        changes.add(change(device, name, gone.get(name), come.get(name)));
      }
    }
    return changes;
  }

  private static ElementChange change(
      String device, String name, @Nullable Labelled was, @Nullable Labelled is) {
    String id = device + "." + name;
    Set<String> pins = new LinkedHashSet<>();
    if (was != null) {
      was.pins().forEach(pin -> pins.add(device + ":" + pin));
    }
    if (is != null) {
      is.pins().forEach(pin -> pins.add(device + ":" + pin));
    }
    String sentence;
    if (was == null) {
      sentence = id + " is new: " + (is == null ? "" : is.label()) + ".";
    } else if (is == null) {
      sentence = id + " is gone; it was " + was.label() + ".";
    } else {
      sentence = id + " was " + was.label() + " and is " + is.label() + ".";
    }
    return new ElementChange(
        Subject.element(device, name),
        was == null ? null : was.label(),
        is == null ? null : is.label(),
        List.copyOf(pins),
        sentence);
  }

  /** Takes away what both sides have: first what has its name still, then what is called anew. */
  private static void cancel(Map<String, Labelled> gone, Map<String, Labelled> come) {
    gone.entrySet()
        .removeIf(
            entry -> {
              Labelled other = come.get(entry.getKey());
              return other != null
                  && other.label().equals(entry.getValue().label())
                  && come.remove(entry.getKey()) != null;
            });
    Map<String, List<String>> byLabel = new LinkedHashMap<>();
    come.forEach(
        (name, one) -> byLabel.computeIfAbsent(one.label(), none -> new ArrayList<>()).add(name));
    gone.values()
        .removeIf(
            one -> {
              List<String> same = byLabel.get(one.label());
              return same != null && !same.isEmpty() && come.remove(same.remove(0)) != null;
            });
  }

  private static Map<String, Labelled> of(Harness harness, String id) {
    Map<String, Labelled> labelled = new LinkedHashMap<>();
    Device device = harness.devices().get(id);
    DeviceType type = device == null ? null : harness.typeOf(device);
    if (type != null) {
      type.elements()
          .forEach(
              (name, element) ->
                  labelled.put(
                      name,
                      new Labelled(
                          name,
                          label(element, type, harness.fitted().containsKey(id + "." + name)),
                          element.ends())));
    }
    return labelled;
  }

  private static String label(Element element, DeviceType type, boolean fitted) {
    boolean eitherWay = !(element instanceof Element.Source || element instanceof Element.Diode);
    List<String> ends = new ArrayList<>(element.ends());
    String what = element.kind();
    if (element instanceof Element.Signal signal) {
      String kind = signal.type() == null ? "" : signal.type().word() + " ";
      String reference = signal.reference();
      return (kind.startsWith("a") ? "an " : "a ")
          + kind
          + "signal at "
          + signal.pin()
          + (reference == null ? "" : " against " + reference);
    }
    if (eitherWay) {
      ends.sort(NaturalOrder.NATURAL);
    }
    String between =
        eitherWay ? " between " + String.join(" and ", ends) : " from " + String.join(" to ", ends);
    if (element instanceof Element.Fuse fuse && !fuse.electronic()) {
      boolean filled = fitted || fuse.ratingA() != null;
      return (filled ? "a fuse" : "an empty fuse way") + between;
    }
    if (element instanceof Element.Contact contact) {
      return "a contact" + between + moved(contact, type);
    }
    return (element instanceof Element.Fuse ? "an electronic fuse" : "a " + what) + between;
  }

  private static String moved(Element.Contact contact, DeviceType type) {
    String coil = contact.coil();
    if (coil == null) {
      return ", closed in " + String.join(", ", new TreeSet<>(contact.closedIn()));
    }
    Element mover = type.elements().get(coil);
    List<String> ends = new ArrayList<>(mover == null ? List.of(coil) : mover.ends());
    ends.sort(NaturalOrder.NATURAL);
    return ", moved by the coil at "
        + String.join(" and ", ends)
        + (contact.restClosed() ? ", closed at rest" : ", open at rest");
  }
}
