/** Rules on the body of the loom: routes, lengths, bundles, coverings, supports, surroundings. */
@NullMarked
package org.tugtest.rule.body;

import org.jspecify.annotations.NullMarked;
