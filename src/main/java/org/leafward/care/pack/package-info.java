/**
 * Rule packs as files: read from config/rulepacks, checked against the catalogue, turned
 * into the values of the rule language.
 */
@NullMarked
package org.leafward.care.pack;

import org.jspecify.annotations.NullMarked;
