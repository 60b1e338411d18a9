package org.leafward.register.store;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import jakarta.persistence.QueryHint;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** Rows of waterings. */
public interface WateringRepository extends JpaRepository<WateringEntity, UUID> {

	@Query("select w from WateringEntity w where w.site = :site and w.day between :first and :last "
			+ "order by w.day, w.enteredAt, w.id")
	List<WateringEntity> between(UUID site, LocalDate first, LocalDate last);

	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query("select w from WateringEntity w where w.site in :sites and w.planting is null "
			+ "and w.day between :first and :last order by w.day, w.enteredAt, w.id")
	List<WateringEntity> ofWholeSites(Collection<UUID> sites, LocalDate first, LocalDate last);

	@Query("select w from WateringEntity w where w.site = :site order by w.day desc, w.enteredAt desc, w.id")
	List<WateringEntity> latest(UUID site, Pageable page);

}
