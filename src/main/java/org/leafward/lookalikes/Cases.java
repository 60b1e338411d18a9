package org.leafward.lookalikes;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.leafward.accounts.PersonId;
import org.leafward.care.AddedFor;
import org.leafward.care.AddedTasks;
import org.leafward.lookalikes.core.AnswerCheck;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Differential;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.NextQuestion;
import org.leafward.lookalikes.core.Question;
import org.leafward.lookalikes.core.Ranking;
import org.leafward.lookalikes.core.RecordLine;
import org.leafward.lookalikes.store.CaseTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.SpeciesId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Cases: a plant that looks wrong, what was answered, and what it may be. Whose a case
 * is, is asked before anything here is called.
 */
@Service
public class Cases {

	/** A bound against scripts. */
	static final int MOST_A_DAY = 60;

	private static final int OLDEST_YEARS = 10;

	private static final int MOST_STRUCK = 200;

	private final CaseTable table;

	private final LookalikeKeys keys;

	private final RecordReader records;

	private final AddedTasks tasks;

	private final Clock clock;

	Cases(CaseTable table, LookalikeKeys keys, RecordReader records, AddedTasks tasks, Clock clock) {
		this.table = table;
		this.keys = keys;
		this.records = records;
		this.tasks = tasks;
		this.clock = clock;
	}

	/**
	 * Opens a case.
	 * @param person whose it is
	 * @param one what it begins with
	 * @return the case
	 * @throws BadInput when the day is to come or more than ten years ago, or the person
	 * opened {@value #MOST_A_DAY} within a day
	 */
	@Transactional
	public PlantCase open(PersonId person, NewCase one) {
		Instant now = now();
		LocalDate today = LocalDate.ofInstant(now, one.zone());
		if (one.seen().isAfter(today)) {
			throw new BadInput("%s is still to come".formatted(one.seen()), "seen", "give the day on which you saw it");
		}
		if (one.seen().isBefore(today.minusYears(OLDEST_YEARS))) {
			throw new BadInput("%s is more than ten years ago".formatted(one.seen()), "seen",
					"give the day on which you saw it this time");
		}
		if (this.table.count(person, now.minus(Duration.ofDays(1))) >= MOST_A_DAY) {
			throw new BadInput("%d cases were opened within a day".formatted(MOST_A_DAY), "plant",
					"go on tomorrow, or delete those that are not needed");
		}
		CaseId id = new CaseId(UUID.randomUUID());
		this.table.add(id, person, one, now);
		return require(id);
	}

	@Transactional(readOnly = true)
	public Optional<PlantCase> find(CaseId id) {
		return this.table.find(id);
	}

	/**
	 * A case that is there.
	 * @param id which
	 * @return the case
	 * @throws NotThere when there is none
	 */
	@Transactional(readOnly = true)
	public PlantCase require(CaseId id) {
		return this.table.find(id).orElseThrow(() -> noCase(id));
	}

	static NotThere noCase(CaseId id) {
		return new NotThere("There is no case " + id);
	}

	/**
	 * A page of somebody's cases, the newest first.
	 * @param person whose
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<PlantCase> ofPerson(PersonId person, int page, int size) {
		return this.table.ofPerson(person, page, size);
	}

	/**
	 * The latest cases of a planting, the newest first.
	 * @param planting which
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<PlantCase> ofPlanting(PlantingId planting, int size) {
		return this.table.ofPlanting(planting, size);
	}

	/**
	 * What follows from a case now.
	 * @param one the case
	 * @return never certain
	 */
	public CaseLook look(PlantCase one) {
		Key key = this.keys.current();
		List<RecordLine> record = record(one);
		List<RecordLine> counted = record.stream().filter((line) -> !one.struck().contains(line.id())).toList();
		Ranking ranking = Differential.rank(key, one.answers(), counted);
		Optional<Question> next = one.closed() ? Optional.empty() : NextQuestion.after(key, one.answers(), counted);
		return new CaseLook(one, key, record, ranking, next);
	}

	private List<RecordLine> record(PlantCase one) {
		PlantingId planting = one.planting();
		SpeciesId species = one.species();
		try {
			if (planting != null) {
				return this.records.of(planting, one.seen());
			}
		}
		catch (NotThere ex) {
			// The planting is gone; its species still says something.
		}
		return (species != null) ? this.records.ofSpecies(species.value()) : List.of();
	}

	/**
	 * Answers a question, or changes its answer.
	 * @param id the case
	 * @param question which question of the key
	 * @param ticked its answers, {@link Answers#NONE} or {@link Answers#CANNOT_TELL}
	 * @return the case as it is now
	 * @throws NotThere when there is no such case or no such question
	 * @throws BadInput when that answers nothing, or the case is closed
	 */
	@Transactional
	public PlantCase answer(CaseId id, String question, Set<String> ticked) {
		Question asked = question(question);
		Set<String> kept = AnswerCheck.of(asked, ticked);
		return answers(id, (edit) -> edit.answers = edit.answers.with(asked.id(), kept));
	}

	/**
	 * Takes an answer back.
	 * @param id the case
	 * @param question which question of the key
	 * @return the case as it is now
	 * @throws NotThere when there is no such case or no such question
	 * @throws BadInput when the case is closed
	 */
	@Transactional
	public PlantCase takeBack(CaseId id, String question) {
		Question asked = question(question);
		return answers(id, (edit) -> edit.answers = edit.answers.without(asked.id()));
	}

	/**
	 * Strikes a line of the record, so that it doesn't count, or lets it count again.
	 * @param id the case
	 * @param line which line
	 * @param struck whether it doesn't count
	 * @return the case as it is now
	 * @throws NotThere when there is no such case
	 * @throws BadInput when there is no such line, or the case is closed
	 */
	@Transactional
	public PlantCase strike(CaseId id, String line, boolean struck) {
		return answers(id, (edit) -> {
			if (!struck) {
				edit.struck.remove(line);
			}
			else if (edit.struck.size() >= MOST_STRUCK
					|| record(edit.before()).stream().noneMatch((one) -> one.id().equals(line))) {
				throw new BadInput("the record doesn’t say that any more", "line", "look at the case anew");
			}
			else {
				edit.struck.add(line);
			}
		});
	}

	/** Begins with answers that the key knows. */
	PlantCase begin(CaseId id, Answers answers) {
		return answers(id, (edit) -> edit.answers = answers);
	}

	private PlantCase answers(CaseId id, Consumer<CaseEdit> change) {
		return change(id, (edit) -> {
			if (edit.before().closed()) {
				throw new BadInput("the case is closed", "case", "open it again to change its answers");
			}
			change.accept(edit);
			Ranking ranking = look(edit.done(now())).ranking();
			edit.leading = ranking.known() ? ranking.first().cause().id() : null;
		});
	}

	/** Changes a case in the caller's transaction. */
	PlantCase change(CaseId id, Consumer<CaseEdit> change) {
		CaseEdit edit = new CaseEdit(this.table.lock(id).orElseThrow(() -> noCase(id)));
		change.accept(edit);
		PlantCase changed = edit.done(now());
		this.table.write(changed, changed.changedAt());
		return changed;
	}

	/**
	 * Deletes a case with all that belongs to it. What it put onto the calendar and
	 * nobody did is withdrawn.
	 * @param id which
	 * @throws NotThere when there is none
	 */
	@Transactional
	public void delete(CaseId id) {
		PlantCase one = this.table.lock(id).orElseThrow(() -> noCase(id));
		SiteId site = one.site();
		if (site != null && !this.tasks.of(id.value()).isEmpty()) {
			this.tasks.put(origin(id), site, null, List.of(), "Its case was deleted.");
		}
		this.table.delete(id);
	}

	/** What tasks of a case are added for. */
	static AddedFor origin(CaseId id) {
		return new AddedFor("case", id.value(), "/cases/" + id);
	}

	private Question question(String id) {
		return this.keys.current().question(id).orElseThrow(() -> new NotThere("There is no question " + id));
	}

	Instant now() {
		return this.clock.instant().truncatedTo(ChronoUnit.MICROS);
	}

	/**
	 * The day at the place of a case.
	 * @param one the case
	 * @return today there
	 */
	public LocalDate today(PlantCase one) {
		return LocalDate.ofInstant(this.clock.instant(), one.zone());
	}

}
