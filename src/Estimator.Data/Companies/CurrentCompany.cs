namespace Estimator.Data.Companies;

/// <summary>The company that is at work; a store sees no other company's rows.</summary>
/// <param name="Id">Its id.</param>
public sealed record CurrentCompany(long Id)
{
    internal const long OwnId = 1;

    /// <summary>The only company of a program without accounts.</summary>
    public static CurrentCompany Own { get; } = new(OwnId);
}
