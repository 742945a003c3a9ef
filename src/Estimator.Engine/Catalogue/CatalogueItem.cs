namespace Estimator.Engine.Catalogue;

/// <summary>Something that is counted, bought or worked on.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Category">cable, box, device, plate, breaker, connector, fastener, luminaire, alarm, equipment, panel, service, consumable, bore or site.</param>
/// <param name="Description">What it is, without brands.</param>
/// <param name="Unit">each or foot.</param>
public sealed record CatalogueItem(string Id, string Category, string Description, string Unit)
{
    /// <summary>Whether it is bought; holes and site work are counted for their hours alone.</summary>
    public bool IsBought => Category is not ("bore" or "bend" or "site");
}
