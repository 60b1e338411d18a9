package org.leafward.register.store;

import java.time.LocalDate;
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

	/** In SQL with an array: lists of parameters are translated anew each time. */
	@QueryHints(@QueryHint(name = "org.hibernate.readOnly", value = "true"))
	@Query(nativeQuery = true, value = "select * from register.watering where site = any(:sites) "
			+ "and day between :first and :last order by day, entered_at, id")
	List<WateringEntity> ofSites(UUID[] sites, LocalDate first, LocalDate last);

	@Query("select w from WateringEntity w where w.site = :site order by w.day desc, w.enteredAt desc, w.id")
	List<WateringEntity> latest(UUID site, Pageable page);

}
