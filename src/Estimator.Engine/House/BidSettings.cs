using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>From cost to price. Each value left out follows the bid table.</summary>
public sealed record BidSettings
{
    /// <summary>Wage of the electrician, in dollars an hour.</summary>
    public Money? ElectricianWage { get; init; }

    /// <summary>Wage of the helper, in dollars an hour.</summary>
    public Money? HelperWage { get; init; }

    /// <summary>Helpers for each electrician.</summary>
    public decimal? HelpersPerElectrician { get; init; }

    /// <summary>Payroll tax, insurance and benefits on straight wages.</summary>
    public Percent? BurdenPercent { get; init; }

    /// <summary>Share of paid hours that is productive.</summary>
    public Percent? ProductivePercent { get; init; }

    /// <summary>Who is on the job; null is an electrician with his helpers.</summary>
    public CrewMix? Crew { get; init; }

    /// <summary>How driving is paid for; null is within the productive share.</summary>
    public TravelBy? Travel { get; init; }

    /// <summary>Driving, where it is counted as hours.</summary>
    public DriveTime? Drive { get; init; }

    /// <summary>The day that work starts; null leaves the calendar without dates.</summary>
    public DateOnly? StartOn { get; init; }

    /// <summary>Working days that the crew waits for each inspection; null is the usual wait.</summary>
    public int? InspectionWaitDays { get; init; }

    /// <summary>Sales tax on material.</summary>
    public Percent? MaterialTaxPercent { get; init; }

    /// <summary>What sales tax falls on; null takes it into the cost of material.</summary>
    public SalesTaxOn? SalesTaxOn { get; init; }

    /// <summary>Permit fee.</summary>
    public Money? Permit { get; init; }

    /// <summary>Other fees: plan review, the utility's charges, disposal.</summary>
    public Money? Fees { get; init; }

    /// <summary>Money set aside for what the customer has still to choose.</summary>
    public ImmutableArray<Allowance> Allowances { get; init; } = [];

    /// <summary>Sentences of the scope that the user changed, left out or added.</summary>
    public ImmutableArray<ScopeEdit> Scope { get; init; } = [];

    /// <summary>Work by others.</summary>
    public Money? Subcontract { get; init; }

    /// <summary>Tools and machines hired for the job.</summary>
    public Money? EquipmentHire { get; init; }

    /// <summary>Overhead on direct cost.</summary>
    public Percent? OverheadPercent { get; init; }

    /// <summary>Contingency on direct cost.</summary>
    public Percent? ContingencyPercent { get; init; }

    /// <summary>Profit.</summary>
    public Percent? ProfitPercent { get; init; }

    /// <summary>Whether profit is a share of cost or of price.</summary>
    public ProfitBasis? ProfitBasis { get; init; }

    /// <summary>The price is rounded up to a multiple of this; zero leaves it to the cent.</summary>
    public Money? RoundPriceTo { get; init; }

    /// <summary>How long the bid stands, in days.</summary>
    public int? ValidDays { get; init; }
}
