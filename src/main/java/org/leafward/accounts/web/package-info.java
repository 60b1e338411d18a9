/**
 * Sign-in, the choice of a person in the demo, and who may open what.
 */
@NullMarked
package org.leafward.accounts.web;

import org.jspecify.annotations.NullMarked;
