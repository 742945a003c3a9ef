using Estimator.Engine.Catalogue;

namespace Estimator.Engine.Learning;

/// <summary>Hours that were worked.</summary>
/// <param name="Id">Its number in the job; 0 for a new entry.</param>
/// <param name="Day">The day.</param>
/// <param name="Phase">The phase.</param>
/// <param name="Hours">Hours of all hands together, waiting not in them, nor what the estimate has elsewhere: driving, and setting up where the productive share takes it in.</param>
/// <param name="Note">Who worked, and what else is worth keeping.</param>
public sealed record ActualHours(int Id, DateOnly Day, WorkPhase Phase, decimal Hours, string Note);
