package org.leafward.advisories;

/**
 * Something that the watch looks out for, as readers of its proposals need it.
 *
 * @param code its name in data and addresses, lower case with hyphens
 * @param title its title
 * @param alert what an advisory of it begins with
 * @param concerns the plants that it is about
 */
public record Condition(String code, Bilingual title, AlertDefaults alert, PlantChoice concerns) {
}
