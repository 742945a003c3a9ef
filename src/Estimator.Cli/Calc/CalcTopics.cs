using System.Collections.Immutable;

namespace Estimator.Cli.Calc;

/// <summary>The calculators.</summary>
internal static class CalcTopics
{
    internal static ImmutableArray<CalcTopic> All { get; } =
    [
        BoxFillCalc.Topic, VoltageDropCalc.Topic, AmpacityCalc.Topic, RangeDemandCalc.Topic, ServiceSizeCalc.Topic, ReceptacleCountCalc.Topic, SupportCountCalc.Topic,
        NailPlateCalc.Topic, UnitConversionCalc.Topic, MarkupMarginCalc.Topic, LoadCalc.Standard, LoadCalc.Optional, LoadCalc.Existing,
    ];

    internal static CalcField EditionField => new("edition", "text", "Edition, such as NEC-2023; years before 2017 use the tables of 2017.");
}
