package boughwright.shelf;

import boughwright.storage.Databases;

/** All of it again on PostgreSQL. */
class ReservationsOnPostgresTest extends ReservationsTest {

    @Override
    Databases databases() {
        return Databases.POSTGRESQL;
    }
}
