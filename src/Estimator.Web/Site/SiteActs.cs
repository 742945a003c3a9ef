using Estimator.Engine.House;

namespace Estimator.Web.Site;

/// <summary>What is done to a site, as functions from a job to the next one.</summary>
public static class SiteActs
{
    /// <summary>The job with its code changed.</summary>
    public static Job Code(Job job, Func<CodeBasis, CodeBasis> change) => job with { Code = change(job.Code) };

    /// <summary>The job with a local rule changed.</summary>
    public static Job Amend(Job job, string id, Func<Amendment, Amendment> change) =>
        Code(job, c => c with { Amendments = [.. c.Amendments.Select(a => a.Id == id ? change(a) : a)] });

    /// <summary>The job with a level changed.</summary>
    public static Job Level(Job job, string id, Func<Level, Level> change) => job with { Levels = [.. job.Levels.Select(l => l.Id == id ? change(l) : l)] };

    /// <summary>The job with the framing of a level changed.</summary>
    public static Job Framing(Job job, string id, Func<LevelFraming, LevelFraming> change) => Level(job, id, l => l with { Framing = change(l.Framing) });

    /// <summary>The job with the walls of all rooms of a level in one state.</summary>
    public static Job Walls(Job job, string levelId, WallState walls) => Level(job, levelId, l => l with { Rooms = [.. l.Rooms.Select(r => r with { Walls = walls })] });

    /// <summary>The job with a building that stands apart changed.</summary>
    public static Job Building(Job job, string id, Func<Building, Building> change) => job with { Buildings = [.. job.Buildings.Select(b => b.Id == id ? change(b) : b)] };

    /// <summary>The job without a building; its rooms are then the house's.</summary>
    public static Job RemoveBuilding(Job job, string id) =>
        job.WithRooms(r => r.Building == id ? r with { Building = null } : r) with { Buildings = [.. job.Buildings.Where(b => b.Id != id)] };

    /// <summary>The job with an unknown changed.</summary>
    public static Job Unknown(Job job, string id, Func<Unknown, Unknown> change) => job with { Unknowns = [.. job.Unknowns.Select(u => u.Id == id ? change(u) : u)] };

    /// <summary>The job without an unknown: it was resolved.</summary>
    public static Job Resolve(Job job, string id) => job with { Unknowns = [.. job.Unknowns.Where(u => u.Id != id)] };
}
