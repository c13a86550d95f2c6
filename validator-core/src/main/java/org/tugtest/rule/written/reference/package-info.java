/** What each thing of a harness names, and which of these names mean nothing. */
@NullMarked
package org.tugtest.rule.written.reference;

import org.jspecify.annotations.NullMarked;
