-- What the last plan of a site was made from, as a fingerprint: while it is the same, nothing is planned.
alter table care.site_plan add column inputs bytea;
