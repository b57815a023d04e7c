import { render } from 'preact';

const place = document.getElementById('app');
if (place) render(<h1>{document.title}</h1>, place);
