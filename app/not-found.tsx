import { ButtonLink } from "./_parts/button-link";
import { Page } from "./_parts/page";

/** What is shown for an address that leads nowhere. */
export default function NotFound() {
  return (
    <Page
      width="narrow"
      finding="There is nothing at this address."
      aside="The parcel, supply or screen may have another address, or was never recorded."
      actions={
        <>
          <ButtonLink href="/" tone="primary">
            Go to This week
          </ButtonLink>
          <ButtonLink href="/parcels">Find a parcel</ButtonLink>
        </>
      }
    />
  );
}
