/** The host ended while it was asked for something. */
export class HostGone extends Error {
  constructor() {
    super('Afterfire has been closed. Start it again and reload this page.');
    this.name = 'HostGone';
  }
}
