package boughwright.shelf;

import boughwright.storage.Databases;

/** All of it again on PostgreSQL. */
class ShelfOnPostgresTest extends ShelfTest {

    @Override
    Databases databases() {
        return Databases.POSTGRESQL;
    }
}
