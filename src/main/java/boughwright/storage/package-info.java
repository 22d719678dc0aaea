/**
 * Where everything is kept that must outlive the process. Input: a folder, or a PostgreSQL server by profile. Output: a data source, and the
 * word that what was committed is on the disk; copies of everything; what other kiosks on the same database changed. What is kept in which
 * table does not belong here.
 */
package boughwright.storage;
