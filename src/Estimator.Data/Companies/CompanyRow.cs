using Estimator.Data.Databases;

namespace Estimator.Data.Companies;

/// <summary>A company and its settings.</summary>
internal sealed class CompanyRow : VersionedRow
{
    public string Name { get; set; } = "";

    public List<string> AddressLines { get; set; } = [];

    public string Licence { get; set; } = "";

    /// <summary>The rates that a new job starts with, in the form of a job file's bid section.</summary>
    public string RatesJson { get; set; } = "{}";
}
