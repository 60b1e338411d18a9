/** Pages and API of cases, of the help desk, and of changing the key. */
@NullMarked
package org.leafward.lookalikes.web;

import org.jspecify.annotations.NullMarked;
