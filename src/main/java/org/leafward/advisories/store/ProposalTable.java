package org.leafward.advisories.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AffectedCounty;
import org.leafward.advisories.Condition;
import org.leafward.advisories.Decided;
import org.leafward.advisories.Decider;
import org.leafward.advisories.DraftText;
import org.leafward.advisories.Figure;
import org.leafward.advisories.Growth;
import org.leafward.advisories.Proposal;
import org.leafward.advisories.ProposalId;
import org.leafward.advisories.ProposalPage;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Proposals and what became of them. */
@Repository
public class ProposalTable {

	private static final TypeReference<List<Figure>> FIGURES = new TypeReference<>() {
	};

	private final JdbcClient database;

	private final JsonMapper json;

	ProposalTable(JdbcClient database, JsonMapper json) {
		this.database = database;
		this.json = json;
	}

	/** What is told of a proposal, as it was when it was made. */
	record Content(Condition condition, Growth growth, DraftText english, DraftText spanish) {
	}

	/**
	 * Takes the right to propose something for a county, which one node gets.
	 * @param condition code of the condition, or of a cause
	 * @param county code of the county
	 * @param proposal the proposal to come
	 * @param today the day in the county
	 * @param againFrom first day on which it may be proposed again
	 * @return false while its cool-down lasts
	 */
	public boolean claim(String condition, String county, ProposalId proposal, LocalDate today, LocalDate againFrom) {
		return this.database.sql("""
				insert into advisories.cool_down as c (condition, county, proposal, again_from) values (?, ?, ?, ?)
				on conflict (condition, county) do update
					set proposal = excluded.proposal, again_from = excluded.again_from where c.again_from <= ?
				""").params(condition, county, proposal.value(), againFrom, today).update() == 1;
	}

	/**
	 * What cools down in a county.
	 * @param county code of the county
	 * @param today the day there
	 * @return codes of conditions
	 */
	public List<String> cooling(String county, LocalDate today) {
		return this.database.sql("select condition from advisories.cool_down where county = ? and again_from > ?")
			.params(county, today)
			.query(String.class)
			.list();
	}

	/**
	 * Writes a proposal that is new.
	 * @param proposal the proposal
	 */
	public void add(Proposal proposal) {
		this.database
			.sql("insert into advisories.proposal (id, condition, content, made_at) values (?, ?, ?::jsonb, ?)")
			.params(proposal.id().value(), proposal.condition().code(),
					this.json.writeValueAsString(new Content(proposal.condition(), proposal.growth(),
							proposal.english(), proposal.spanish())),
					proposal.madeAt().atOffset(ZoneOffset.UTC))
			.update();
		for (AffectedCounty one : proposal.counties()) {
			this.database.sql("""
					insert into advisories.proposal_county (proposal, county, name, region, zone, from_day, to_day,
						figures, reasons) values (?, ?, ?, ?, ?, ?, ?, ?::jsonb, ?)
					""")
				.params(proposal.id().value(), one.code(), one.name(), one.region(), one.zone().getId(), one.from(),
						one.to(), this.json.writeValueAsString(one.figures()), one.reasons().toArray(String[]::new))
				.update();
		}
	}

	/**
	 * A page of proposals.
	 * @param counties names of counties, or null for all
	 * @param openOnly whether only those that are open in one of them
	 * @param page from 0
	 * @return the page
	 */
	public ProposalPage page(@Nullable Collection<String> counties, boolean openOnly, int page) {
		String[] names = (counties != null)
				? counties.stream().map((one) -> one.toLowerCase(Locale.ROOT)).toArray(String[]::new) : new String[0];
		String concerned = """
				from advisories.proposal p where exists (select from advisories.proposal_county c
					where c.proposal = p.id and (:all or lower(c.name) = any(:names))
						and (not :open or c.standing = 'OPEN'))
				""";
		Map<String, Object> asked = Map.of("all", counties == null, "names", names, "open", openOnly);
		long total = this.database.sql("select count(*) " + concerned).params(asked).query(Long.class).single();
		List<Head> heads = this.database
			.sql("select p.* " + concerned + " order by p.made_at desc, p.id limit :size offset :skip")
			.params(asked)
			.param("size", ProposalPage.SIZE)
			.param("skip", (long) page * ProposalPage.SIZE)
			.query(this::head)
			.list();
		return new ProposalPage(whole(heads), page, total);
	}

	public Optional<Proposal> find(ProposalId id) {
		return whole(this.database.sql("select * from advisories.proposal where id = ?")
			.param(id.value())
			.query(this::head)
			.list()).stream().findFirst();
	}

	private record Head(ProposalId id, Content content, Instant madeAt) {
	}

	private Head head(ResultSet row, int number) throws SQLException {
		return new Head(new ProposalId(row.getObject("id", UUID.class)),
				this.json.readValue(row.getString("content"), Content.class),
				row.getObject("made_at", OffsetDateTime.class).toInstant());
	}

	private List<Proposal> whole(List<Head> heads) {
		record Of(UUID proposal, AffectedCounty county) {
		}
		Map<UUID, List<Of>> counties = this.database
			.sql("select * from advisories.proposal_county where proposal = any(?) order by name, county")
			.param(heads.stream().map((one) -> one.id().value()).toArray(UUID[]::new))
			.query((row, number) -> new Of(row.getObject("proposal", UUID.class), county(row)))
			.list()
			.stream()
			.collect(Collectors.groupingBy(Of::proposal));
		return heads.stream()
			.map((head) -> new Proposal(head.id(), head.content().condition(), head.madeAt(),
					Objects.requireNonNull(counties.get(head.id().value())).stream().map(Of::county).toList(),
					head.content().growth(), head.content().english(), head.content().spanish()))
			.toList();
	}

	private AffectedCounty county(ResultSet row) throws SQLException {
		return new AffectedCounty(row.getString("county"), row.getString("name"), row.getString("region"),
				ZoneId.of(row.getString("zone")), row.getObject("from_day", LocalDate.class),
				row.getObject("to_day", LocalDate.class), this.json.readValue(row.getString("figures"), FIGURES),
				List.of((String[]) row.getArray("reasons").getArray()),
				AffectedCounty.Standing.valueOf(row.getString("standing")));
	}

	/** A decision about a proposal. */
	public record Decision(AffectedCounty.Standing standing, Decider by, Instant at, String why,
			@Nullable UUID advisory) {
	}

	/**
	 * Decides for counties that nobody has decided for.
	 * @param id which proposal
	 * @param counties codes of the counties
	 * @param decision what was decided
	 * @return for how many
	 */
	public int decide(ProposalId id, Collection<String> counties, Decision decision) {
		return this.database.sql("""
				update advisories.proposal_county set standing = :standing, decided_by = :by, decided_person = :person,
					decided_at = :at, why = :why, advisory = :advisory
				where proposal = :proposal and county = any(:counties) and standing = 'OPEN'
				""")
			.param("standing", decision.standing().name())
			.param("by", decision.by().name())
			.param("person", decision.by().person())
			.param("at", decision.at().atOffset(ZoneOffset.UTC))
			.param("why", decision.why())
			.param("advisory", decision.advisory())
			.param("proposal", id.value())
			.param("counties", counties.toArray(String[]::new))
			.update();
	}

	/**
	 * Who decided and why, for readers.
	 * @param id which proposal
	 * @return for the counties that somebody has decided for
	 */
	public List<Decided> decided(ProposalId id) {
		return this.database.sql("""
				select county, decided_by, decided_at, why from advisories.proposal_county
				where proposal = ? and decided_at is not null
				""")
			.param(id.value())
			.query((row, number) -> new Decided(row.getString("county"),
					Objects.requireNonNullElse(row.getString("decided_by"), "somebody who has left"),
					row.getObject("decided_at", OffsetDateTime.class).toInstant(),
					Objects.requireNonNullElse(row.getString("why"), "")))
			.list();
	}

}
