namespace Estimator.Documents.Workbooks;

/// <summary>Which workbook of an estimate is written.</summary>
public enum JobWorkbook
{
    /// <summary>Customer, cost, takeoff, labor and explanations.</summary>
    Bid = 1,

    /// <summary>What a customer is sent, alone.</summary>
    Customer,

    /// <summary>An owner's budget.</summary>
    Budget,

    /// <summary>What a crew works by.</summary>
    Crew,

    /// <summary>Load calculation and panel schedules.</summary>
    Permit,
}
