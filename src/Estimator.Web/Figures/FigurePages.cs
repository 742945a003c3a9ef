namespace Estimator.Web.Figures;

/// <summary>Pages of the explanation book that the web adds for figures which no stage made. They lie below zero, each once, so that any two may be opened together.</summary>
internal static class FigurePages
{
    internal const int Overview = -1;
    internal const int Bid = -2;
    internal const int Takeoff = -3;
    internal const int CableCut = -4;
    internal const int Surplus = -5;
    internal const int Crew = -6;
    internal const int Circuits = -7;
    internal const int Rooms = -8;
    internal const int Choice = -9;
    internal const int Difference = -10;
    internal const int Plan = -11;
    internal const int JobsOfAnOrder = -13;
    internal const int Upgrade = -14;
    internal const int SupplyChoice = -15;
    internal const int Actuals = -31;

    /// <summary>The plan of the first supplier; those of the others lie below it.</summary>
    internal const int SupplierPlans = -100;
}
