import type { Emphasis } from '#core/gym/machines/torque-request.ts';
import type { MachineGeometry } from '#core/journal/kinds/gym-equipment.ts';
import { say } from '../../views/say.ts';

/** What a machine is, in a line. */
export function geometryWords(geometry: MachineGeometry): string {
  switch (geometry.of) {
    case 'lever':
      return `lever; pegs ${geometry.pegs.map(({ name }) => name).join(', ')}`;
    case 'sled':
      return say(`sled of ${geometry.sledKg} kg on rails at ${geometry.railsDeg}°`);
    case 'stack': {
      const half = geometry.halfPinKg === undefined ? '' : `, half holes of ${geometry.halfPinKg} kg`;
      return say(
        `stack, ${geometry.firstKg} kg to ${geometry.lastKg} kg in steps of ${geometry.stepKg} kg${half}`,
      );
    }
    case 'unknown':
      return `pegs ${geometry.pegs.join(', ')}, not measured`;
  }
}

export const EMPHASIS: Readonly<Record<Emphasis, string>> = {
  start: 'hardest work at the start',
  middle: 'hardest work in the middle',
  end: 'hardest work at the end',
  even: 'work spread evenly',
};
