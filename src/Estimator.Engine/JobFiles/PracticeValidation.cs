using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.JobFiles;

/// <summary>Refuses ways of working that no firm has: they would make a bid that looks right.</summary>
internal static class PracticeValidation
{
    internal static void Check(Practice practice, ProblemList problems)
    {
        problems.Length("$.practice.receptacle_spacing", practice.ReceptacleSpacing, Length.FromFeet(1), Length.FromFeet(50));
        problems.Length("$.practice.receptacle_height", practice.ReceptacleHeight, Length.Zero, Length.FromFeet(12));
        problems.Length("$.practice.switch_height", practice.SwitchHeight, Length.Zero, Length.FromFeet(12));
        problems.Length("$.practice.box_tail", practice.BoxTail, Length.Zero, Length.FromFeet(20));
        problems.Length("$.practice.panel_tail", practice.PanelTail, Length.Zero, Length.FromFeet(50));
        problems.Length("$.practice.maximum_wall_thickness", practice.MaximumWallThickness, Length.Zero, Length.FromFeet(4));
        problems.Range("$.practice.outlets_per_20a", practice.OutletsPer20A, 1, JobLimits.Count, "outlets");
        problems.Range("$.practice.outlets_per_15a", practice.OutletsPer15A, 1, JobLimits.Count, "outlets");
        problems.Range("$.practice.run_slack_percent", practice.RunSlackPercent?.ToHundredths(), 0, 100, "percent");
        problems.Range("$.practice.cut_tolerance_percent", practice.CutTolerancePercent?.ToHundredths(), 0, 100, "percent");
        foreach (var (category, percent) in practice.SparePercents)
        {
            var path = $"$.practice.spare_percents.{category}";
            problems.Range(path, percent.ToHundredths(), 0, 100, "percent");
            if (!PracticeDefaults.SpareCategories.Contains(category))
            {
                problems.Add(path, category, string.Join(", ", PracticeDefaults.SpareCategories) + "; cable has cut_tolerance_percent");
            }
        }

        problems.Length("$.practice.cut_trim", practice.CutTrim, Length.Zero, Length.FromFeet(10));
        problems.Length("$.practice.useful_end", practice.UsefulEnd, Length.Zero, Length.FromFeet(1000));
        problems.Range("$.practice.branch_voltage_drop_percent", practice.BranchVoltageDropPercent?.ToHundredths(), 0.1m, 100, "percent");
    }
}
