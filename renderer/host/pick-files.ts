/**
 * Lets the person pick files in a browser; none if they change their mind. Must be called from a
 * click or a key press.
 */
export const pickFiles = (accept: string, multiple: boolean): Promise<File[]> =>
  new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.multiple = multiple;
    input.addEventListener('change', () => {
      resolve([...(input.files ?? [])]);
    });
    input.addEventListener('cancel', () => {
      resolve([]);
    });
    input.click();
  });
