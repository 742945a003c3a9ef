using System.Collections.Immutable;

namespace Estimator.Web.Frame;

/// <summary>Pages that belong to no job. A page stands here when it exists.</summary>
public static class OtherPlaces
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<(string Title, string Address)> All { get; } = [("All jobs", "/"), ("Buy", "/order"), ("Orders", "/orders"), ("Budget", "/budget"), ("Catalogue", "/catalogue"), ("Suppliers", "/suppliers"), ("Stock", "/stock"), ("Learned", "/learned"), ("Settings", "/settings")];
}
