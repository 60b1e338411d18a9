package org.leafward.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Something given from outside can't be used. Says what is wrong, where, and how to mend
 * it; it is shown to the person who gave it, word for word. When several things can't be
 * used, it speaks for the first one and carries the others.
 */
public class BadInput extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final String where;

	private final String mend;

	/** The others, in order; an ArrayList, as exceptions can be serialized. */
	private final ArrayList<BadInput> others = new ArrayList<>();

	/**
	 * Creates a refusal.
	 * @param what what is wrong, with the value and the bound
	 * @param where the field, line or file
	 * @param mend what to do instead
	 */
	public BadInput(String what, String where, String mend) {
		super(what);
		this.where = where;
		this.mend = mend;
	}

	/**
	 * Puts several refusals into one.
	 * @param refused the refusals, at least one
	 * @return the only one, or one that carries all
	 */
	public static BadInput of(List<BadInput> refused) {
		BadInput first = refused.get(0);
		if (refused.size() == 1) {
			return first;
		}
		BadInput several = new BadInput(first.what(), first.where(), first.mend());
		several.others.addAll(refused.subList(1, refused.size()));
		return several;
	}

	/**
	 * Every refusal that it carries, itself first.
	 * @return at least one; each carries no other
	 */
	public List<BadInput> all() {
		List<BadInput> all = new ArrayList<>();
		all.add(this.others.isEmpty() ? this : new BadInput(what(), this.where, this.mend));
		all.addAll(this.others);
		return all;
	}

	/**
	 * What to say beside each field of a form.
	 * @return the sentence by the name of the field, the first one for each, in order
	 */
	public Map<String, String> byField() {
		Map<String, String> sentences = new LinkedHashMap<>();
		all().forEach((one) -> sentences.putIfAbsent(one.where(), one.what() + ": " + one.mend() + "."));
		return sentences;
	}

	public String what() {
		return String.valueOf(getMessage());
	}

	public String where() {
		return this.where;
	}

	public String mend() {
		return this.mend;
	}

	@Override
	public String toString() {
		return String.format(Locale.ROOT, "%s (%s): %s", what(), this.where, this.mend);
	}

}
