// A button that asks for a file of the person's own.
import { inWords } from "../engine/error";
import { said } from "../words/words";

type OpenFileProps = {
	label: string;
	accept: string;
	take: (file: File) => Promise<void>;
	tell: (trouble: string) => void; // why it could not be taken
};

export function OpenFile({ label, accept, take, tell }: OpenFileProps) {
	return (
		<label class="button">
			{label}
			<input
				class="unseen"
				type="file"
				accept={accept}
				onChange={async (event) => {
					const input = event.currentTarget;
					const file = input.files?.[0];
					if (file) await take(file).catch((error: unknown) => tell(inWords(error).map(said).join(" ")));
					input.value = ""; // so that the same file can be asked for again
				}}
			/>
		</label>
	);
}
