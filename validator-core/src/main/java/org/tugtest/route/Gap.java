package org.tugtest.route;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Two pieces of the layout that nothing joins, though a wire needs it.
 *
 * @param loom whose segments were looked at, with those of no loom; empty for loose wires
 * @param here the nodes of one piece, in natural order
 * @param there the nodes of the other, in natural order; its first comes after that of {@code here}
 * @param nearHere the node of {@code here} that is nearest to the other piece by coordinates; where
 *     no two nodes have any, a node the wire has to pass
 * @param nearThere the same of {@code there}
 * @param apartMm how far those two are from each other in a straight line; null without coordinates
 * @param throughLoom a loom whose segments would join them; null when none does
 */
public record Gap(
    String loom,
    Set<String> here,
    Set<String> there,
    String nearHere,
    String nearThere,
    @Nullable Double apartMm,
    @Nullable String throughLoom) {}
