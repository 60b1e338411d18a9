package org.leafward.care.workshop;

import java.util.List;
import java.util.Optional;
import org.leafward.care.PackVersion;
import org.leafward.care.core.diff.LineDiff;
import org.leafward.care.pack.PackTexts;
import org.leafward.care.store.PackTable;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The versions of packs and what changed in them. */
@Service
@Transactional(readOnly = true)
public class PackHistory {

	private static final int MOST_CHANGES = 50;

	private final PackTable table;

	private final PackTexts texts;

	PackHistory(PackTable table, PackTexts texts) {
		this.table = table;
		this.texts = texts;
	}

	/**
	 * The newest version of each pack that was ever seen.
	 * @return by id
	 */
	public List<PackVersion> newest() {
		return this.table.newest();
	}

	public Optional<PackVersion> newest(String pack) {
		return this.table.newest(pack);
	}

	/**
	 * Versions of a pack, newest first.
	 * @param pack id of the pack
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<PackVersion> versions(String pack, int page, int size) {
		return this.table.of(pack, Math.multiplyExact(page, size), size);
	}

	/**
	 * One version.
	 * @param pack id of the pack
	 * @param version its version
	 * @return the version
	 * @throws NotThere when there is none
	 */
	public PackVersion require(String pack, int version) {
		return this.table.find(pack, version)
			.orElseThrow(() -> new NotThere("There is no version %d of the pack %s".formatted(version, pack)));
	}

	/**
	 * What changed in a version.
	 * @param version the version
	 * @return against the one before; empty in the first that is known
	 */
	public List<LineDiff.Line> changes(PackVersion version) {
		return this.table.before(version.pack(), version.version())
			.map((before) -> LineDiff.between(before.content(), version.content()))
			.orElse(List.of());
	}

	/**
	 * The history of a rule.
	 * @param pack id of the pack
	 * @param rule id of the rule
	 * @return versions in which it changed, newest first, at most 50
	 */
	public List<RuleChange> of(String pack, String rule) {
		return this.table.changing(pack, rule, MOST_CHANGES).stream().map((version) -> {
			List<LineDiff.Line> lines = this.table.before(pack, version.version())
				.map((before) -> LineDiff.between(text(before, rule), text(version, rule)))
				.orElse(List.of());
			return new RuleChange(version, lines);
		}).toList();
	}

	private String text(PackVersion version, String rule) {
		return this.texts.rule(version.content(), rule).map(PackTexts.RuleText::text).orElse("");
	}

}
