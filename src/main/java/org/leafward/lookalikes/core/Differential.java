package org.leafward.lookalikes.core;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Ranks causes by answers and record.
 * <p>
 * Bayes' theorem with evidences taken as independent: the share of a cause goes with how
 * often it is met times the likelihood of each thing that is known. Evidences do hang
 * together, so the sum of their logarithms is damped ({@link Key.Scale#damping}), and a
 * small part of all is left to causes that nothing speaks for, so that none is ever
 * certain.
 */
public final class Differential {

	/** Part of all that is spread evenly, for mistaken answers. */
	private static final double DOUBT = 0.04;

	/** A reason that changes less is not worth a line. */
	private static final double WORTH_SAYING = 1.15;

	/** A pair is too close to call while the second has this part of the first. */
	private static final double CLOSE = 0.35;

	/** A neighbor below this share needs no test to be told apart. */
	private static final double IN_QUESTION = 0.08;

	private static final int MOST_REASONS = 8;

	private Differential() {
	}

	/**
	 * Ranks all causes.
	 * @param key the key
	 * @param answers what was answered; questions and answers that the key doesn't know
	 * are passed over
	 * @param record what the record says, without struck lines
	 * @return never certain
	 */
	public static Ranking rank(Key key, Answers answers, List<RecordLine> record) {
		List<Item> items = Item.of(key, answers, record);
		double[] shares = shares(key, items);
		List<Integer> order = IntStream.range(0, shares.length)
			.boxed()
			.sorted(Comparator.comparingDouble((Integer one) -> -shares[one]))
			.toList();
		List<Finding> findings = new ArrayList<>();
		for (int one : order) {
			findings.add(finding(key, items, shares, order, one));
		}
		return new Ranking(findings, unsplit(key, shares, order), !items.isEmpty());
	}

	/** Shares of the causes in the key's order. */
	static double[] shares(Key key, List<Item> items) {
		double[] logarithms = new double[key.causes().size()];
		for (int i = 0; i < logarithms.length; i++) {
			double sum = 0;
			for (Item item : items) {
				sum += Math.log(item.likely()[i]);
			}
			logarithms[i] = Math.log(key.causes().get(i).share()) + key.scale().damping() * sum;
		}
		double[] shares = Chances.shares(logarithms);
		for (int i = 0; i < shares.length; i++) {
			shares[i] = (1 - DOUBT) * shares[i] + DOUBT / shares.length;
		}
		return shares;
	}

	private static Finding finding(Key key, List<Item> items, double[] shares, List<Integer> order, int place) {
		List<Reason> reasonsFor = new ArrayList<>();
		List<Reason> against = new ArrayList<>();
		for (Item item : items) {
			double times = item.times(key, place);
			if (times >= WORTH_SAYING || times <= 1 / WORTH_SAYING) {
				((times > 1) ? reasonsFor : against)
					.add(new Reason(item.words(), item.evidence(), times, Reason.Strength.of(times), item.line()));
			}
		}
		Comparator<Reason> strongest = Comparator.comparingDouble((one) -> -Math.abs(Math.log(one.times())));
		Cause cause = key.causes().get(place);
		return new Finding(cause, shares[place], Sureness.of(shares[place]),
				reasonsFor.stream().sorted(strongest).limit(MOST_REASONS).toList(),
				against.stream().sorted(strongest).limit(MOST_REASONS).toList(), settle(key, shares, order, cause));
	}

	/** First what parts it from those that are in question too, then what confirms it. */
	private static List<String> settle(Key key, double[] shares, List<Integer> order, Cause cause) {
		Set<String> sentences = new LinkedHashSet<>();
		for (int other : order) {
			String neighbor = key.causes().get(other).id();
			if (shares[other] >= IN_QUESTION && !neighbor.equals(cause.id())) {
				key.pairs()
					.stream()
					.filter((pair) -> pair.of(cause.id(), neighbor))
					.forEach((pair) -> sentences.add(pair.split()));
			}
		}
		sentences.add(cause.confirm());
		return List.copyOf(sentences);
	}

	/** Pairs of the first cause with others that come close to it. */
	private static List<Pair> unsplit(Key key, double[] shares, List<Integer> order) {
		String first = key.causes().get(order.get(0)).id();
		double most = shares[order.get(0)];
		List<Pair> unsplit = new ArrayList<>();
		for (int other : order.subList(1, Math.min(4, order.size()))) {
			if (shares[other] >= CLOSE * most && shares[other] >= IN_QUESTION) {
				String second = key.causes().get(other).id();
				key.pairs().stream().filter((pair) -> pair.of(first, second)).forEach(unsplit::add);
			}
		}
		return unsplit;
	}

}
