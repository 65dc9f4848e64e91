/** What stands beside advice that could hurt someone. */
export const Caution = ({ children }: { readonly children: string }) => (
  <p className="caution">
    <strong>Caution. </strong>
    {children}
  </p>
);
