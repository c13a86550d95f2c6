/** Rules on plugs, terminals, seals, studs, splices and labels. */
@NullMarked
package org.tugtest.rule.connectors;

import org.jspecify.annotations.NullMarked;
