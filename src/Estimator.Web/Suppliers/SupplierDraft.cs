using Estimator.Data.Suppliers;
using Estimator.Engine.Measures;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;

namespace Estimator.Web.Suppliers;

/// <summary>A supplier as it is being typed.</summary>
public sealed class SupplierDraft
{
    /// <summary>The supplier that is changed; null for a new one.</summary>
    public Supplier? Old { get; init; }

    /// <summary>Its name.</summary>
    public string Name { get; set; } = "";

    /// <summary>The company's account there.</summary>
    public string Account { get; set; } = "";

    /// <summary>Whom to call or write to.</summary>
    public string Contact { get; set; } = "";

    /// <summary>What else to know.</summary>
    public string Note { get; set; } = "";

    /// <summary>How goods usually come.</summary>
    public SupplyWay Way { get; set; } = SupplyWay.Delivery;

    /// <summary>What a delivery costs; empty is nothing.</summary>
    public string Delivery { get; set; } = "";

    /// <summary>The least that an order must come to; empty is any.</summary>
    public string Minimum { get; set; } = "";

    /// <summary>Goods from which delivery is free; empty is never.</summary>
    public string FreeFrom { get; set; } = "";

    /// <summary>Whether the company buys there.</summary>
    public bool Active { get; set; } = true;

    /// <summary>A supplier to be changed.</summary>
    public static SupplierDraft Of(Supplier supplier) => new()
    {
        Old = supplier,
        Name = supplier.Name,
        Account = supplier.Account,
        Contact = supplier.Contact,
        Note = supplier.Note,
        Way = supplier.Way,
        Delivery = Shown(supplier.Delivery),
        Minimum = Shown(supplier.Minimum),
        FreeFrom = supplier.FreeFrom is { } free ? American.Fixed(free.ToDollars(), 2) : "",
        Active = supplier.Active,
    };

    /// <summary>The supplier, or what is wrong with each field by its name.</summary>
    public (Supplier? Supplier, IReadOnlyDictionary<string, string> Problems) Read()
    {
        var problems = new Dictionary<string, string>(StringComparer.Ordinal);
        Money? Take(string field, string text)
        {
            if (text.Trim().Length == 0)
            {
                return null;
            }

            var read = PriceText.Parse(text, SupplierLimits.Dollars);
            if (!read.Ok)
            {
                problems[field] = read.Problem;
                return null;
            }

            return read.Value;
        }

        if (Name.Trim().Length is 0 or > SupplierLimits.Name)
        {
            problems[nameof(Name)] = $"Found {American.Count(Name.Trim().Length, "character")}; 1 to {SupplierLimits.Name} are accepted.";
        }

        var (delivery, minimum, free) = (Take(nameof(Delivery), Delivery), Take(nameof(Minimum), Minimum), Take(nameof(FreeFrom), FreeFrom));
        return problems.Count > 0 ? (null, problems) : ((Old ?? new Supplier { Name = "" }) with
        {
            Name = Name.Trim(),
            Account = Account.Trim(),
            Contact = Contact.Trim(),
            Note = Note.Trim(),
            Way = Way,
            Delivery = delivery ?? Money.Zero,
            Minimum = minimum ?? Money.Zero,
            FreeFrom = free,
            Active = Active,
        }, problems);
    }

    private static string Shown(Money money) => money == Money.Zero ? "" : American.Fixed(money.ToDollars(), 2);
}
