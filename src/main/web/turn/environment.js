import {BackSide, BoxGeometry, Color, FrontSide, Mesh, MeshBasicMaterial, PMREMGenerator, Scene} from 'three';

/** Windows and lamps that shiny things reflect: [azimuth, height, width, tall, colour, power]. */
const WINDOWS = [
  [0.9, 3.2, 2.6, 3.4, '#fff6e6', 9], [-0.75, 3.6, 2, 3, '#ffffff', 14], [2.3, 2.6, 2.8, 3, '#ffe9cc', 8], [-2.2, 3, 2.4, 3.2, '#fff6e6', 10],
  [3.1, 3.4, 1.4, 2.6, '#fff6e6', 8], [0.1, -1.2, 3, 0.7, '#ffd9a0', 2.5],
];

/** A room made of boxes, blurred once into what the finishes reflect. The caller disposes of the target. */
export function reflections(renderer) {
  const room = new Scene();
  const box = new BoxGeometry();
  const add = (colour, power, side = FrontSide) => {
    const mesh = new Mesh(box, new MeshBasicMaterial({color: new Color(colour).multiplyScalar(power), side, toneMapped: false}));
    room.add(mesh);
    return mesh;
  };
  add('#a2947e', 0.9, BackSide).scale.set(20, 12, 20);
  add('#6b4f36', 0.7).scale.set(19, 0.2, 19);
  room.children[1].position.y = -5;
  add('#fffaf0', 1.6).scale.set(12, 0.2, 12);
  room.children[2].position.y = 5.6;
  for (const [around, y, w, h, colour, power] of WINDOWS) {
    const pane = add(colour, power);
    pane.position.set(Math.sin(around) * 8, y, Math.cos(around) * 8);
    pane.scale.set(w, h, 0.1);
    pane.lookAt(0, y, 0);
  }
  const generator = new PMREMGenerator(renderer);
  const target = generator.fromScene(room, 0.02);
  generator.dispose();
  room.children.forEach((mesh) => mesh.material.dispose());
  box.dispose();
  return target;
}
