package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A change of circuits that a branch means to make ({@code changes/NAME.json}).
 *
 * @param nets any pin on each net
 */
public record AnnouncedChange(
    String id, List<Ref> nets, @Nullable String reason, @Nullable String by) {
  public AnnouncedChange {
    nets = List.copyOf(nets);
  }
}
