// How to find out: a picture of our own and a sentence.

export function How({ picture, text }: { picture: preact.JSX.Element | null; text: string }) {
	return (
		<figure class="how">
			{picture}
			<figcaption>{text}</figcaption>
		</figure>
	);
}
