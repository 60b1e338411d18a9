/**
 * Pages, forms and API of the register.
 */
@NullMarked
package org.leafward.register.web;

import org.jspecify.annotations.NullMarked;
