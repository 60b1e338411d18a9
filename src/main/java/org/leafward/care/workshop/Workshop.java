package org.leafward.care.workshop;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.care.PackVersion;
import org.leafward.care.RulePackPublished;
import org.leafward.care.RulePacks;
import org.leafward.care.core.check.Contradiction;
import org.leafward.care.core.diff.LineDiff;
import org.leafward.care.pack.PackTexts;
import org.leafward.care.pack.PublishedRulePacks;
import org.leafward.care.store.PackTable;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.Problem;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Where specialists change the rules: a draft is read like any pack, and published as the
 * next version. Nothing is ever overwritten; going back publishes an older content anew.
 */
@Service
public class Workshop {

	private final PublishedRulePacks packs;

	private final PackTexts texts;

	private final PackTable table;

	private final AuditLog audit;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	private final TransactionTemplate transaction;

	Workshop(PublishedRulePacks packs, PackTexts texts, PackTable table, AuditLog audit,
			ApplicationEventPublisher events, Clock clock, PlatformTransactionManager transactions) {
		this.packs = packs;
		this.texts = texts;
		this.table = table;
		this.audit = audit;
		this.events = events;
		this.clock = clock;
		this.transaction = new TransactionTemplate(transactions);
	}

	/**
	 * Reads a draft with all other packs.
	 * @param pack id of the pack
	 * @param content the pack as written; its version is replaced by the next one
	 * @return the draft
	 * @throws BrokenKnowledge with every problem by line
	 */
	public PackDrafted draft(String pack, String content) {
		return draft(pack, content, this.table.newest(pack).orElse(null));
	}

	private PackDrafted draft(String pack, String written, @Nullable PackVersion newest) {
		String text = written.replace("\r\n", "\n").replace('\r', '\n');
		if (text.length() > PackVersion.LONGEST) {
			throw broken(pack, 0, "the pack has more than %d characters".formatted(PackVersion.LONGEST),
					"put some of its rules into a pack of their own");
		}
		if (text.indexOf('\0') >= 0) {
			throw broken(pack, 0, "the text has a NUL character", "remove it");
		}
		int version = (newest != null) ? newest.version() + 1 : 1;
		String content = this.texts.withVersion(text, version).orElse(text);
		List<Problem> unreadable = this.texts.problems(pack, content.getBytes(StandardCharsets.UTF_8));
		if (!unreadable.isEmpty()) {
			throw new BrokenKnowledge(unreadable);
		}
		if (!this.texts.pack(content).equals(Optional.of(pack))) {
			throw broken(pack, 1, "the text is of the pack '%s'".formatted(this.texts.pack(content).orElse("")),
					"write pack: " + pack);
		}
		if (!content.lines().anyMatch(("version: " + version)::equals)) {
			throw broken(pack, 1, "the version stands on no line of its own", "write version: 1 on a line of its own");
		}
		List<String> changed = this.texts.changed((newest != null) ? newest.content() : null, content);
		RulePacks as = this.packs.with(pack, content, version, changed);
		Set<List<String>> known = new HashSet<>();
		this.packs.latest().contradictions().forEach((one) -> known.add(names(one)));
		return new PackDrafted(pack, version, content, as, changed,
				as.contradictions().stream().filter((one) -> !known.contains(names(one))).toList());
	}

	private static List<String> names(Contradiction one) {
		return List.of(one.task(), one.holdOff(), String.valueOf(one.settled()));
	}

	private static BrokenKnowledge broken(String pack, int line, String what, String mend) {
		return new BrokenKnowledge(List.of(new Problem(pack, line, 1, "", what, mend)));
	}

	/**
	 * Publishes a draft as the next version.
	 * @param pack id of the pack
	 * @param base the version that the draft began with, 0 for a new pack
	 * @param content the pack as written
	 * @param note what was changed and why
	 * @param author who
	 * @return the version; the newest one when nothing differs from it
	 * @throws PublishConflict when another version was published in between
	 * @throws BrokenKnowledge when the draft can't be used
	 * @throws BadInput when the note is missing or too long
	 */
	public PackVersion publish(String pack, int base, String content, String note, Author author) {
		String said = note.strip();
		if (said.isEmpty()) {
			throw new BadInput("the note is missing", "note", "say in a sentence what you changed and why");
		}
		if (said.length() > PackVersion.LONGEST_NOTE || said.indexOf('\0') >= 0) {
			throw new BadInput("the note is longer than %d characters".formatted(PackVersion.LONGEST_NOTE), "note",
					"keep to a sentence or two");
		}
		PackVersion published = this.transaction.execute((status) -> {
			this.table.lock();
			PackVersion newest = this.table.newest(pack).orElse(null);
			if (newest != null && newest.version() != base) {
				String before = this.table.find(pack, base).map(PackVersion::content).orElse("");
				throw new PublishConflict(base, newest, LineDiff.between(before, newest.content()));
			}
			PackDrafted draft = draft(pack, content, newest);
			if (newest != null
					&& draft.content().equals(this.texts.withVersion(newest.content(), draft.version()).orElse(""))) {
				return newest;
			}
			PackVersion version = new PackVersion(pack, draft.version(), PackVersion.Origin.WORKSHOP, draft.content(),
					said, draft.changed(), author.name(), author.person(),
					this.clock.instant().truncatedTo(ChronoUnit.SECONDS));
			this.table.write(version);
			this.audit.note(Deed.CHANGED_RULES, null, "%s, version %d".formatted(pack, version.version()));
			this.events.publishEvent(new RulePackPublished(pack, version.version(), version.at()));
			return version;
		});
		return Objects.requireNonNull(published);
	}

	/**
	 * Publishes the content of an older version anew.
	 * @param pack id of the pack
	 * @param base the version that is there now, as far as whoever asks knows
	 * @param version the older version
	 * @param note why
	 * @param author who
	 * @return the new version
	 */
	public PackVersion goBack(String pack, int base, int version, String note, Author author) {
		PackVersion old = this.table.find(pack, version)
			.orElseThrow(() -> new NotThere("There is no version %d of %s".formatted(version, pack)));
		return publish(pack, base, old.content(), note, author);
	}

}
