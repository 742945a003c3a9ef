namespace Estimator.Engine.House;

/// <summary>How driving, and setting the job up and clearing it, are paid for. It is one of them and never both.</summary>
public enum TravelBy
{
    /// <summary>Within the share of paid hours that is productive.</summary>
    ProductiveShare = 1,

    /// <summary>As hours of each trip and of each phase that is set up; then no share is taken off.</summary>
    Hours,
}
