// Vaadin's connection indicator holds text outside every landmark; as a status it is announced and allowed there.
document.querySelector('vaadin-connection-indicator')?.setAttribute('role', 'status');
