package org.leafward.lookalikes.core;

import java.util.List;
import java.util.Optional;

/**
 * What the answers and the record amount to.
 *
 * @param findings all causes of the key, the likeliest first
 * @param unsplit pairs on top that are too close to call, with what parts them; often
 * empty
 * @param known whether anything was answered or recorded at all; without, the order says
 * only what help desks meet most
 */
public record Ranking(List<Finding> findings, List<Pair> unsplit, boolean known) {

	/** Causes below this share are not worth showing. */
	private static final double SHOWN = 0.05;

	public Ranking {
		findings = List.copyOf(findings);
		unsplit = List.copyOf(unsplit);
	}

	public Finding first() {
		return this.findings.get(0);
	}

	/**
	 * Those worth showing.
	 * @return one to five, the likeliest first
	 */
	public List<Finding> shown() {
		return this.findings.stream().filter((one) -> one == first() || one.share() >= SHOWN).limit(5).toList();
	}

	public Optional<Finding> of(String cause) {
		return this.findings.stream().filter((one) -> one.cause().id().equals(cause)).findFirst();
	}

	/**
	 * The rank of a cause.
	 * @param cause its identifier
	 * @return from 1; 0 when the key doesn't know it
	 */
	public int rank(String cause) {
		for (int i = 0; i < this.findings.size(); i++) {
			if (this.findings.get(i).cause().id().equals(cause)) {
				return i + 1;
			}
		}
		return 0;
	}

}
