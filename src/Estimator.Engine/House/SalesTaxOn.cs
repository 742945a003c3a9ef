namespace Estimator.Engine.House;

/// <summary>What sales tax falls on, by the rule of the state and the kind of contract.</summary>
public enum SalesTaxOn
{
    /// <summary>On what the contractor buys: he is the consumer of his material, and the tax is part of its cost.</summary>
    PartOfCost = 1,

    /// <summary>On the price that the customer is charged for material, markup in it: the contractor sells the material.</summary>
    MaterialCharged,

    /// <summary>On the whole price.</summary>
    WholePrice,
}
