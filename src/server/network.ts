import { hostname, networkInterfaces, type NetworkInterfaceInfo } from 'node:os';

/** The network that the lab was opened to. */
export interface Network {
  /** addresses of the lab in it, the likeliest first */
  urls(): string[];
  /** whether a request may name the lab so: an address of this machine, or its name */
  knows(name: string): boolean;
}

type Interfaces = Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>;

/** Networks that stay inside a machine, by the names that virtual machines, containers and tunnels give theirs. */
const INSIDE = /^(?:docker|br-|veth|virbr|vmnet|vboxnet|vethernet|utun|tun|tap|wg|lxc|cni|podman)/i;
const HOME = /^(?:192\.168\.|10\.|172\.(?:1[6-9]|2\d|3[01])\.)/;
const SELF_GIVEN = /^169\.254\./;

/** IPv4 addresses by which others reach this machine: those of a home or office network first, those inside the machine last. */
export function ownAddresses(interfaces: Interfaces = networkInterfaces()): string[] {
  const found = Object.entries(interfaces).flatMap(([name, addresses = []]) =>
    addresses
      .filter(({ family, internal, address }) => family === 'IPv4' && !internal && !SELF_GIVEN.test(address))
      .map(({ address }) => ({ address, rank: (INSIDE.test(name) ? 2 : 0) + (HOME.test(address) ? 0 : 1) })),
  );
  return found.toSorted((a, b) => a.rank - b.rank).map(({ address }) => address);
}

/** This machine may come and go between networks: each look is a new one. */
export function openNetwork(port: () => number): Network {
  return {
    urls: () => ownAddresses().map((address) => `http://${address}:${port()}/`),
    knows(name) {
      const own = hostname()
        .toLowerCase()
        .replace(/\.local$/, '');
      return (own !== '' && (name === own || name === `${own}.local`)) || ownAddresses().includes(name);
    },
  };
}
