// The first screen's picture: a floor in plan with its low ground, and the same floor cut from A to B, as the map and the section draw them.
const low = [
	"M60 40C120 20 220 40 240 85 300 80 360 90 366 130 366 175 300 180 220 180 120 184 50 170 44 120 40 90 40 60 60 40Z",
	"M100 70C150 50 205 70 225 95 290 92 330 110 326 135 318 166 250 168 200 166 130 166 90 150 84 120 80 100 84 82 100 70Z",
	"M140 95C175 82 205 95 225 110 265 108 285 120 280 136 270 152 230 154 200 152 160 150 132 140 128 122 126 110 130 101 140 95Z",
	"M175 112C200 106 240 114 240 128 236 140 205 142 188 138 168 132 162 118 175 112Z",
];
const walls = "M20 14H250V70H380V190H20z";
const deck = "C70 14 100 18 140 34S200 56 230 50 300 18 380 14";

export function FirstPicture() {
	return (
		<div class="start-picture" aria-hidden="true">
			<svg class="start-plan" viewBox="0 0 400 206">
				<path class="band-0" d={walls} />
				{low.map((d, i) => (
					<g key={d}>
						<path class={`band-${2 * i + 2}`} d={d} />
						<path class="contour" d={d} />
					</g>
				))}
				<path class="wall" d={walls} />
				<path class="door" d="M296 190H344" />
				<path class="door-line" d="M296 190H344" />
				<path class="mark-high" d="M35 25L26 41H44z" />
				<path class="mark-low" d="M206 133L197 117H215z" />
				<path class="cut-under" d="M8 125H392" />
				<path class="cut-line" d="M8 125H392" />
				<text class="map-text" x="4" y="114">
					A
				</text>
				<text class="map-text" x="387" y="114">
					B
				</text>
			</svg>
			<svg class="start-profile" viewBox="20 0 360 76" preserveAspectRatio="none">
				<path class="start-pour" d={`M20 8V12${deck}V8Z`} />
				<path class="start-ground" d={`M20 12${deck}V76H20Z`} />
				<path class="start-deck" d={`M20 12${deck}`} />
				<path class="start-plane" d="M20 8H380" />
			</svg>
		</div>
	);
}
